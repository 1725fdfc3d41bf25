//! Arbitrary texts, and mutations of a text.

use proptest::prelude::*;
use proptest::sample::Index;

/// A text such as a name, with quotes and letters that need escapes; now and then one that is refused.
pub fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        8 => "[ -~éß½″]{1,12}",
        1 => "[ -~\n]{0,40}",
        1 => "\\PC{0,6}",
        1 => any::<String>(),
    ]
}

/// A text with up to four slips: bytes cut out, doubled, replaced or put in.
pub fn mutations(text: String) -> impl Strategy<Value = String> {
    let slip = (
        0..5u8,
        any::<Index>(),
        any::<Index>(),
        "[-0-9a-zA-Z()\\[\\]{},:\"'/*# \n\\\\é\u{0}]{0,3}",
    );
    proptest::collection::vec(slip, 1..5).prop_map(move |slips| {
        slips.into_iter().fold(text.clone(), |text, (kind, a, b, new)| {
            let chars: Vec<char> = text.chars().collect();
            let a = a.index(chars.len() + 1);
            let b = (a + b.index(12)).min(chars.len());
            let (head, tail) = (chars[..a].iter(), chars[b..].iter());
            match kind {
                0 => head.collect(),
                1 => head.chain(tail).collect(),
                2 => head.chain(&chars[a..b]).chain(&chars[a..]).collect(),
                3 => head.copied().chain(new.chars()).chain(tail.copied()).collect(),
                _ => head.copied().chain(new.chars()).chain(chars[a..].iter().copied()).collect(),
            }
        })
    })
}
