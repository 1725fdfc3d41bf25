//! Where the entries of a list stand in a RON text, so that a fault in one can be shown.

use super::error::Place;

/// The place of entry `index` of the top-level list `list`; `None` where there is none. The text must
/// have been parsed before: this only skips over strings, comments and brackets.
pub(crate) fn place_of(text: &str, list: &str, index: usize) -> Option<Place> {
    let mut scan = Scan { text, at: 0 };
    let mut depth = 0usize;
    let mut in_list = false;
    let mut entry = 0;
    let mut fresh = false;
    while let Some((at, token)) = scan.next_token() {
        if in_list && depth == 2 && fresh && !matches!(token, Token::Close) {
            if entry == index {
                return Some(place_at(text, at));
            }
            fresh = false;
        }
        match token {
            Token::Open => {
                depth += 1;
                if in_list && depth == 2 {
                    fresh = true;
                }
            }
            Token::Close => {
                depth = depth.checked_sub(1)?;
                in_list &= depth >= 2;
            }
            Token::Comma if in_list && depth == 2 => {
                entry += 1;
                fresh = true;
            }
            Token::Word(word) if depth == 1 => in_list = word == list,
            _ => {}
        }
    }
    None
}

/// The line and column of a byte offset.
pub(super) fn place_at(text: &str, at: usize) -> Place {
    let before = &text.as_bytes()[..at.min(text.len())];
    let line_start = before.iter().rposition(|&b| b == b'\n').map_or(0, |i| i + 1);
    Place {
        line: before.iter().filter(|&&b| b == b'\n').count() + 1,
        // Characters, not bytes: every byte that does not continue one.
        column: before[line_start..].iter().filter(|&&b| b & 0xC0 != 0x80).count() + 1,
    }
}

enum Token<'t> {
    Open,
    Close,
    Comma,
    Word(&'t str),
    Other,
}

struct Scan<'t> {
    text: &'t str,
    at: usize,
}

impl<'t> Scan<'t> {
    fn next_token(&mut self) -> Option<(usize, Token<'t>)> {
        loop {
            let start = self.at;
            let rest = &self.text[start..];
            let c = rest.chars().next()?;
            if rest.starts_with("//") {
                self.at += rest.find('\n').unwrap_or(rest.len());
            } else if rest.starts_with("/*") {
                self.at += block_comment(rest);
            } else if c.is_whitespace() {
                self.at += c.len_utf8();
            } else {
                let (length, token) = token(rest, c);
                self.at += length;
                return Some((start, token));
            }
        }
    }
}

fn token(rest: &str, c: char) -> (usize, Token<'_>) {
    match c {
        '(' | '[' | '{' => (1, Token::Open),
        ')' | ']' | '}' => (1, Token::Close),
        ',' => (1, Token::Comma),
        '"' => (quoted(rest), Token::Other),
        'r' if raw_hashes(rest).is_some() => (raw(rest), Token::Other),
        c if c.is_alphanumeric() || c == '_' => {
            let end = rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len());
            (end, Token::Word(&rest[..end]))
        }
        c => (c.len_utf8(), Token::Other),
    }
}

/// The length of a string with escapes, quotes included.
fn quoted(rest: &str) -> usize {
    let mut escaped = false;
    for (i, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return i + 1,
            _ => {}
        }
    }
    rest.len()
}

/// The number of `#` in front of a raw string's quote.
fn raw_hashes(rest: &str) -> Option<usize> {
    let after = &rest[1..];
    let hashes = after.bytes().take_while(|&b| b == b'#').count();
    after[hashes..].starts_with('"').then_some(hashes)
}

fn raw(rest: &str) -> usize {
    let hashes = raw_hashes(rest).unwrap_or(0);
    let start = hashes + 2;
    let end = format!("\"{}", "#".repeat(hashes));
    rest[start..].find(&end).map_or(rest.len(), |i| start + i + end.len())
}

/// Block comments nest in RON.
fn block_comment(rest: &str) -> usize {
    let mut depth = 0usize;
    let mut at = 0;
    while at < rest.len() {
        if rest[at..].starts_with("/*") {
            depth += 1;
            at += 2;
        } else if rest[at..].starts_with("*/") {
            depth -= 1;
            at += 2;
            if depth == 0 {
                return at;
            }
        } else {
            at += rest[at..].chars().next().map_or(1, char::len_utf8);
        }
    }
    rest.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = r##"// elements: [ in a comment
(
    schema: 1, /* elements: [1, /* 2, */ 3] */
    site: (title: "elements: [a, \" b]", elements: [7, 8]),
    elements: [
        Note(text: "é, ]", at: (1, 2)), Note(text: r#"x", "#),
        // last
        Note([1, 2]),
    ],
    set_aside: [(a: 1)],
)"##;

    #[test]
    fn finds_entries_between_strings_comments_and_nested_lists() {
        let place = |list, i| place_of(TEXT, list, i).map(|p| (p.line, p.column));
        assert_eq!(place("elements", 0), Some((6, 9)));
        assert_eq!(place("elements", 1), Some((6, 41)));
        assert_eq!(place("elements", 2), Some((8, 9)));
        assert_eq!(place("elements", 3), None);
        assert_eq!(place("set_aside", 0), Some((10, 17)));
        assert_eq!(place("nothing", 0), None);
    }

    #[test]
    fn never_panics_on_broken_text() {
        for end in (0..TEXT.len()).filter(|&i| TEXT.is_char_boundary(i)) {
            place_of(&TEXT[..end], "elements", 2);
            place_of(&TEXT[end..], "elements", 2);
        }
    }
}
