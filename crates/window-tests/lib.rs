//! Tests of the window, in a crate of their own so that the test harness's renderer does not become part
//! of the program.
