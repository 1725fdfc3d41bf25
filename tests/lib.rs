//! Tests that see every crate are in `tests/tests`.
