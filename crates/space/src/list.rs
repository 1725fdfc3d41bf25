//! A list that shares what it holds with lists made from it.

use std::ops::Index;
use std::sync::Arc;

/// How many items are shared or copied together.
const CHUNK: usize = 16;

/// A list in chunks. A copy shares the chunks; putting another item in copies one of them. So two lists that come from
/// one another are compared by their pointers first.
#[derive(Clone, Debug)]
pub struct List<T> {
    /// All full but the last, and none empty.
    chunks: Vec<Arc<Vec<T>>>,
    len: usize,
}

impl<T> List<T> {
    /// Whether it shares anything with another list.
    pub fn shares(&self, other: &List<T>) -> bool {
        self.chunks.iter().zip(&other.chunks).any(|(a, b)| Arc::ptr_eq(a, b))
    }

    pub fn len(&self) -> usize {
        self.len
    }

    pub fn is_empty(&self) -> bool {
        self.len == 0
    }

    pub fn get(&self, index: usize) -> Option<&T> {
        self.chunks.get(index / CHUNK)?.get(index % CHUNK)
    }

    pub fn first(&self) -> Option<&T> {
        self.get(0)
    }

    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &T> + Clone {
        self.chunks.iter().flat_map(|chunk| chunk.iter())
    }

    /// The items from one index up to another.
    pub fn range(&self, from: usize, to: usize) -> impl Iterator<Item = &T> + Clone {
        (from..to).map(|i| &self[i])
    }

    /// How many items of a list in order come before the first of which this does not hold.
    pub fn partition_point(&self, holds: impl Fn(&T) -> bool) -> usize {
        let chunk = self.chunks.partition_point(|c| c.last().is_some_and(&holds));
        match self.chunks.get(chunk) {
            Some(items) => chunk * CHUNK + items.partition_point(holds),
            None => self.len,
        }
    }

    /// Where the item with a key is in a list in the order of that key.
    pub fn find<K: Ord>(&self, key: &K, of: impl Fn(&T) -> K) -> Option<usize> {
        let at = self.partition_point(|item| of(item) < *key);
        self.get(at).filter(|item| of(item) == *key).map(|_| at)
    }
}

impl<T: Clone> List<T> {
    /// Puts an item in the place of another.
    pub fn put(&mut self, index: usize, item: T) {
        Arc::make_mut(&mut self.chunks[index / CHUNK])[index % CHUNK] = item;
    }
}

impl<T: PartialEq> List<T> {
    /// The indices at which two lists of one length differ.
    pub fn differing<'a>(&'a self, other: &'a List<T>) -> impl Iterator<Item = usize> + use<'a, T> {
        let chunks = self.chunks.iter().zip(&other.chunks).enumerate();
        chunks.filter(|(_, (a, b))| !Arc::ptr_eq(a, b)).flat_map(|(at, (a, b))| {
            let items = a.iter().zip(b.iter()).enumerate();
            items.filter(|(_, (a, b))| a != b).map(move |(i, _)| at * CHUNK + i)
        })
    }
}

impl<T: PartialEq> PartialEq for List<T> {
    fn eq(&self, other: &List<T>) -> bool {
        self.len == other.len && self.differing(other).next().is_none()
    }
}

impl<T> From<Vec<T>> for List<T> {
    fn from(items: Vec<T>) -> List<T> {
        let len = items.len();
        let mut items = items.into_iter().peekable();
        let mut chunks = Vec::with_capacity(len.div_ceil(CHUNK));
        while items.peek().is_some() {
            chunks.push(Arc::new(items.by_ref().take(CHUNK).collect()));
        }
        List { chunks, len }
    }
}

impl<T> Index<usize> for List<T> {
    type Output = T;

    fn index(&self, index: usize) -> &T {
        &self.chunks[index / CHUNK][index % CHUNK]
    }
}

impl<'a, T> IntoIterator for &'a List<T> {
    type Item = &'a T;
    type IntoIter = std::iter::FlatMap<
        std::slice::Iter<'a, Arc<Vec<T>>>,
        std::slice::Iter<'a, T>,
        fn(&'a Arc<Vec<T>>) -> std::slice::Iter<'a, T>,
    >;

    fn into_iter(self) -> Self::IntoIter {
        self.chunks.iter().flat_map(|chunk| chunk.iter())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// A list is what the vector is that it was made from, also after items were put in.
        #[test]
        fn it_is_the_vector(
            items in prop::collection::vec(0u32..50, 0..70),
            puts in prop::collection::vec((0usize..70, 0u32..50), 0..6),
            key in 0u32..50,
        ) {
            let mut sorted = items.clone();
            sorted.sort_unstable();
            let list = List::from(sorted.clone());
            prop_assert_eq!(list.partition_point(|i| *i < key), sorted.partition_point(|i| *i < key));
            prop_assert_eq!(list.find(&key, |i| *i).is_some(), sorted.contains(&key));
            let (before, mut after, mut plain) = (List::from(items.clone()), List::from(items.clone()), items.clone());
            for (at, item) in puts.into_iter().filter(|(at, _)| *at < items.len()) {
                after.put(at, item);
                plain[at] = item;
            }
            prop_assert!(after.iter().eq(&plain));
            prop_assert_eq!(after.iter().rev().collect::<Vec<_>>(), plain.iter().rev().collect::<Vec<_>>());
            prop_assert_eq!(after.len(), plain.len());
            let differ: Vec<usize> = before.differing(&after).collect();
            let expected: Vec<usize> = (0..plain.len()).filter(|i| plain[*i] != items[*i]).collect();
            prop_assert_eq!(differ, expected);
        }
    }
}
