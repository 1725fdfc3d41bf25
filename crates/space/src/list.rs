//! A list that shares what it holds with lists made from it.

use std::iter::FlatMap;
use std::ops::Index;
use std::slice::Iter;
use std::sync::Arc;

/// How many items are copied together.
const LEAF: usize = 4;

/// How many leaves are copied together, as pointers.
const BRANCH: usize = 64;

type Leaf<T> = Arc<[T]>;
type Branch<T> = Arc<[Leaf<T>]>;

/// A list in leaves on branches. A copy shares everything; putting another item in copies one leaf and the pointers to
/// the leaves and branches beside it. So two lists that come from one another are compared by their pointers first.
#[derive(Clone, Debug)]
pub struct List<T> {
    /// All full but the last of the last, and none empty.
    branches: Arc<[Branch<T>]>,
    len: usize,
}

impl<T> List<T> {
    /// Whether it shares anything with another list.
    pub fn shares(&self, other: &List<T>) -> bool {
        let leaves =
            |a: &Branch<T>, b: &Branch<T>| a.iter().zip(&**b).any(|(a, b)| Arc::ptr_eq(a, b));
        self.branches.iter().zip(&*other.branches).any(|(a, b)| leaves(a, b))
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

    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &T> + Clone {
        self.branches.iter().flat_map(|branch| branch.iter()).flat_map(|leaf| leaf.iter())
    }

    /// The items from one index up to another.
    pub fn range(&self, from: usize, to: usize) -> impl Iterator<Item = &T> + Clone {
        (from..to).map(|i| &self[i])
    }

    /// How many items of a list in order come before the first of which this does not hold.
    pub fn partition_point(&self, holds: impl Fn(&T) -> bool) -> usize {
        let leaf_holds = |leaf: &Leaf<T>| leaf.last().is_some_and(&holds);
        let branch = self.branches.partition_point(|b| b.last().is_some_and(leaf_holds));
        let Some(leaves) = self.branches.get(branch) else { return self.len };
        let leaf = leaves.partition_point(leaf_holds);
        let before = (branch * BRANCH + leaf) * LEAF;
        before + leaves.get(leaf).map_or(0, |items| items.partition_point(&holds))
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
        let (leaf, at) = (index / LEAF, index % LEAF);
        let branch = Arc::make_mut(&mut Arc::make_mut(&mut self.branches)[leaf / BRANCH]);
        Arc::make_mut(&mut branch[leaf % BRANCH])[at] = item;
    }
}

impl<T: PartialEq> List<T> {
    /// The indices at which two lists of one length differ.
    pub fn differing<'a>(&'a self, other: &'a List<T>) -> impl Iterator<Item = usize> + use<'a, T> {
        let branches = unshared(&self.branches, &other.branches);
        let leaves = branches.flat_map(|(at, a, b)| {
            unshared(a, b).map(move |(leaf, a, b)| (at * BRANCH + leaf, a, b))
        });
        leaves.flat_map(|(at, a, b)| {
            let items = a.iter().zip(b.iter()).enumerate();
            items.filter(|(_, (a, b))| a != b).map(move |(i, _)| at * LEAF + i)
        })
    }
}

/// What two lists of pointers have in one place without sharing it, with that place.
fn unshared<'a, T>(
    a: &'a [Arc<[T]>],
    b: &'a [Arc<[T]>],
) -> impl Iterator<Item = (usize, &'a [T], &'a [T])> {
    let pairs = a.iter().zip(b).enumerate().filter(|(_, (a, b))| !Arc::ptr_eq(a, b));
    pairs.map(|(at, (a, b))| (at, &**a, &**b))
}

impl<T: PartialEq> PartialEq for List<T> {
    fn eq(&self, other: &List<T>) -> bool {
        self.len == other.len && self.differing(other).next().is_none()
    }
}

impl<T> From<Vec<T>> for List<T> {
    fn from(items: Vec<T>) -> List<T> {
        let len = items.len();
        let leaves: Vec<Leaf<T>> = chunks(items, LEAF);
        List { branches: chunks(leaves, BRANCH).into(), len }
    }
}

/// Items in chunks of one size, the last one of what is left.
fn chunks<T>(items: Vec<T>, size: usize) -> Vec<Arc<[T]>> {
    let count = items.len().div_ceil(size);
    let mut items = items.into_iter();
    (0..count).map(|_| items.by_ref().take(size).collect()).collect()
}

impl<T> Index<usize> for List<T> {
    type Output = T;

    fn index(&self, index: usize) -> &T {
        let leaf = index / LEAF;
        &self.branches[leaf / BRANCH][leaf % BRANCH][index % LEAF]
    }
}

type Leaves<'a, T> =
    FlatMap<Iter<'a, Branch<T>>, Iter<'a, Leaf<T>>, fn(&'a Branch<T>) -> Iter<'a, Leaf<T>>>;

impl<'a, T> IntoIterator for &'a List<T> {
    type Item = &'a T;
    type IntoIter = FlatMap<Leaves<'a, T>, Iter<'a, T>, fn(&'a Leaf<T>) -> Iter<'a, T>>;

    fn into_iter(self) -> Self::IntoIter {
        let leaves: Leaves<'a, T> = self.branches.iter().flat_map(|branch| branch.iter());
        leaves.flat_map(|leaf| leaf.iter())
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
            items in prop::collection::vec(0u32..50, 0..700),
            puts in prop::collection::vec((0usize..700, 0u32..50), 0..6),
            key in 0u32..50,
        ) {
            let mut sorted = items.clone();
            sorted.sort_unstable();
            let list = List::from(sorted.clone());
            prop_assert_eq!(list.partition_point(|i| *i < key), sorted.partition_point(|i| *i < key));
            prop_assert_eq!(list.find(&key, |i| *i).is_some(), sorted.contains(&key));
            let before = List::from(items.clone());
            let (mut after, mut plain) = (before.clone(), items.clone());
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
