//! A list that shares what it holds with lists made from it.

use std::ops::{Index, Range};
use std::slice;
use std::sync::Arc;

/// How many items are shared or copied together: few, because some are large.
const CHUNK: usize = 4;
/// How many chunks are shared or listed anew together.
const CHUNKS: usize = 64;
const PAGE: usize = CHUNK * CHUNKS;

type Chunk<T> = Arc<Vec<T>>;

/// A list in pages of chunks. A copy shares the pages; putting another item in copies one chunk, and the list of the
/// chunks of one page. So a copy with another item costs the same in a long list as in a short one, and two lists that
/// come from one another are compared by their pointers first.
#[derive(Clone, Debug)]
pub struct List<T> {
    /// All pages and all chunks are full but the last, and none is empty.
    pages: Vec<Arc<Vec<Chunk<T>>>>,
    len: usize,
}

impl<T> List<T> {
    /// Whether it shares anything with another list.
    pub fn shares(&self, other: &List<T>) -> bool {
        self.pages.iter().zip(&other.pages).any(|(a, b)| {
            Arc::ptr_eq(a, b) || a.iter().zip(b.iter()).any(|(a, b)| Arc::ptr_eq(a, b))
        })
    }

    pub fn len(&self) -> usize {
        self.len
    }

    pub fn is_empty(&self) -> bool {
        self.len == 0
    }

    pub fn get(&self, index: usize) -> Option<&T> {
        (index < self.len).then(|| &self[index])
    }

    pub fn first(&self) -> Option<&T> {
        self.get(0)
    }

    pub fn iter(&self) -> Iter<'_, T> {
        let chunks = 0..self.len.div_ceil(CHUNK);
        Iter { list: self, front: [].iter(), chunks, back: [].iter(), left: self.len }
    }

    /// The items from one index up to another.
    pub fn range(&self, from: usize, to: usize) -> impl Iterator<Item = &T> + Clone {
        (from..to).map(|i| &self[i])
    }

    /// How many items of a list in order come before the first of which this does not hold.
    pub fn partition_point(&self, holds: impl Fn(&T) -> bool) -> usize {
        let all_of_chunk = |chunk: &Chunk<T>| chunk.last().is_some_and(&holds);
        let page = self.pages.partition_point(|p| p.last().is_some_and(all_of_chunk));
        let Some(chunks) = self.pages.get(page) else { return self.len };
        let chunk = chunks.partition_point(all_of_chunk);
        page * PAGE + chunk * CHUNK + chunks[chunk].partition_point(holds)
    }

    /// Where the item with a key is in a list in the order of that key.
    pub fn find<K: Ord>(&self, key: &K, of: impl Fn(&T) -> K) -> Option<usize> {
        let at = self.partition_point(|item| of(item) < *key);
        self.get(at).filter(|item| of(item) == *key).map(|_| at)
    }

    fn chunk(&self, index: usize) -> &Chunk<T> {
        &self.pages[index / CHUNKS][index % CHUNKS]
    }
}

impl<T: Clone> List<T> {
    /// Puts an item in the place of another.
    pub fn put(&mut self, index: usize, item: T) {
        let page = Arc::make_mut(&mut self.pages[index / PAGE]);
        Arc::make_mut(&mut page[index % PAGE / CHUNK])[index % CHUNK] = item;
    }

    /// Puts an item at the end.
    pub fn push(&mut self, item: T) {
        if self.len.is_multiple_of(PAGE) {
            self.pages.push(Arc::default());
        }
        let page = Arc::make_mut(&mut self.pages[self.len / PAGE]);
        if self.len.is_multiple_of(CHUNK) {
            page.push(Arc::default());
        }
        Arc::make_mut(&mut page[self.len % PAGE / CHUNK]).push(item);
        self.len += 1;
    }
}

impl<T: PartialEq> List<T> {
    /// The indices at which two lists of one length differ.
    pub fn differing<'a>(&'a self, other: &'a List<T>) -> impl Iterator<Item = usize> + use<'a, T> {
        apart(&self.pages, &other.pages).flat_map(|(page, a, b)| {
            apart(a, b).flat_map(move |(chunk, a, b)| {
                let items = a.iter().zip(b.iter()).enumerate();
                let differ = items.filter(|(_, (a, b))| a != b);
                differ.map(move |(i, _)| page * PAGE + chunk * CHUNK + i)
            })
        })
    }
}

/// The places at which two lists of pointers differ, with what is there.
fn apart<'a, P>(
    a: &'a [Arc<P>],
    b: &'a [Arc<P>],
) -> impl Iterator<Item = (usize, &'a P, &'a P)> + use<'a, P> {
    let pairs = a.iter().zip(b).enumerate();
    pairs.filter(|(_, (a, b))| !Arc::ptr_eq(a, b)).map(|(i, (a, b))| (i, &**a, &**b))
}

impl<T: PartialEq> PartialEq for List<T> {
    fn eq(&self, other: &List<T>) -> bool {
        self.len == other.len && self.differing(other).next().is_none()
    }
}

impl<T: Eq> Eq for List<T> {}

impl<T> Default for List<T> {
    fn default() -> List<T> {
        List { pages: Vec::new(), len: 0 }
    }
}

impl<T> From<Vec<T>> for List<T> {
    fn from(items: Vec<T>) -> List<T> {
        let len = items.len();
        let mut items = items.into_iter();
        let mut chunk = || Arc::new(items.by_ref().take(CHUNK).collect());
        let of_page = |page: usize| (len - page * PAGE).min(PAGE).div_ceil(CHUNK);
        let pages = 0..len.div_ceil(PAGE);
        let pages = pages.map(|page| Arc::new((0..of_page(page)).map(|_| chunk()).collect()));
        List { pages: pages.collect(), len }
    }
}

impl<T> Index<usize> for List<T> {
    type Output = T;

    fn index(&self, index: usize) -> &T {
        &self.chunk(index / CHUNK)[index % CHUNK]
    }
}

/// The items of a list in order.
#[derive(Clone, Debug)]
pub struct Iter<'a, T> {
    list: &'a List<T>,
    /// What is left of the chunk that was begun at the front.
    front: slice::Iter<'a, T>,
    /// The chunks between the two that were begun.
    chunks: Range<usize>,
    back: slice::Iter<'a, T>,
    left: usize,
}

impl<'a, T> Iterator for Iter<'a, T> {
    type Item = &'a T;

    fn next(&mut self) -> Option<&'a T> {
        self.left = self.left.saturating_sub(1);
        loop {
            if let Some(item) = self.front.next() {
                return Some(item);
            }
            match self.chunks.next() {
                Some(chunk) => self.front = self.list.chunk(chunk).iter(),
                None => return self.back.next(),
            }
        }
    }

    fn size_hint(&self) -> (usize, Option<usize>) {
        (self.left, Some(self.left))
    }
}

impl<'a, T> DoubleEndedIterator for Iter<'a, T> {
    fn next_back(&mut self) -> Option<&'a T> {
        self.left = self.left.saturating_sub(1);
        loop {
            if let Some(item) = self.back.next_back() {
                return Some(item);
            }
            match self.chunks.next_back() {
                Some(chunk) => self.back = self.list.chunk(chunk).iter(),
                None => return self.front.next_back(),
            }
        }
    }
}

impl<T> ExactSizeIterator for Iter<'_, T> {}

impl<'a, T> IntoIterator for &'a List<T> {
    type Item = &'a T;
    type IntoIter = Iter<'a, T>;

    fn into_iter(self) -> Iter<'a, T> {
        self.iter()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// A list is what the vector is that it was made from, also after items were put in. In one case of two it has
        /// several pages.
        #[test]
        fn it_is_the_vector(
            items in prop_oneof![prop::collection::vec(0u32..50, 0..70), prop::collection::vec(0u32..50, 900..2200)],
            puts in prop::collection::vec((any::<prop::sample::Index>(), 0u32..50), 0..6),
            key in 0u32..50,
            back in prop::collection::vec(any::<bool>(), 0..80),
        ) {
            let mut sorted = items.clone();
            sorted.sort_unstable();
            let list = List::from(sorted.clone());
            prop_assert_eq!(list.partition_point(|i| *i < key), sorted.partition_point(|i| *i < key));
            prop_assert_eq!(list.find(&key, |i| *i).is_some(), sorted.contains(&key));
            let (before, mut plain) = (List::from(items.clone()), items.clone());
            let mut after = before.clone();
            for (at, item) in puts.into_iter().filter(|_| !items.is_empty()) {
                let at = at.index(items.len());
                after.put(at, item);
                plain[at] = item;
            }
            prop_assert!(after.iter().eq(&plain));
            prop_assert!(after.iter().rev().eq(plain.iter().rev()));
            prop_assert!((0..plain.len() + 20).all(|i| after.get(i) == plain.get(i)));
            prop_assert_eq!((after.len(), after.iter().len()), (plain.len(), plain.len()));
            let (mut ends, mut plain_ends) = (after.iter(), plain.iter());
            for back in back {
                let pair = if back {
                    (ends.next_back(), plain_ends.next_back())
                } else {
                    (ends.next(), plain_ends.next())
                };
                prop_assert_eq!(pair.0, pair.1);
                prop_assert_eq!(ends.len(), plain_ends.len());
            }
            prop_assert!(ends.eq(plain_ends));
            let differ: Vec<usize> = before.differing(&after).collect();
            let expected: Vec<usize> = (0..plain.len()).filter(|i| plain[*i] != items[*i]).collect();
            prop_assert_eq!(before == after, expected.is_empty());
            prop_assert_eq!(differ, expected);
            let mut pushed = List::default();
            plain.iter().for_each(|item| pushed.push(*item));
            prop_assert_eq!(pushed, after);
        }
    }

    #[test]
    fn a_copy_with_another_item_shares_all_but_one_chunk() {
        let list = List::from((0..3000).collect::<Vec<i32>>());
        let mut other = list.clone();
        other.put(1500, -1);
        other.push(3000);
        let apart = (0..3000 / CHUNK).filter(|&i| !Arc::ptr_eq(list.chunk(i), other.chunk(i)));
        assert_eq!(apart.collect::<Vec<_>>(), [1500 / CHUNK]);
        assert!(list.shares(&other) && !list.shares(&List::from(vec![1])));
        assert!(Arc::ptr_eq(&list.pages[0], &other.pages[0]));
        assert_eq!((list.len(), other.len()), (3000, 3001));
    }
}
