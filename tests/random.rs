//! Numbers that look random and are the same in every run.

/// A linear congruential generator; the value is its seed.
#[derive(Clone, Debug)]
pub struct Random(pub u64);

impl Random {
    /// A number from 0 to below `bound`.
    pub fn below(&mut self, bound: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % bound
    }
}
