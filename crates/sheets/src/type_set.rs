//! Type on paper: sizes, and lines broken at a width.

use drawing::{Anchor, Marks, P, Style, TextMark, Tone, text_width};

/// Sizes on paper in points. The least that stays legible on a copy is 3/32 in high (common practice, no source).
pub(crate) const SMALL: f32 = 7.0;
pub(crate) const BODY: f32 = 8.0;
pub(crate) const HEAD: f32 = 11.0;
pub(crate) const TITLE: f32 = 16.0;

/// Height of a line in multiples of the size.
pub(crate) const LEADING: f32 = 1.35;

/// A text cut into lines no wider than `width`; a word that is wider is cut within.
pub(crate) fn wrap(text: &str, size: f32, style: Style, width: f32) -> Vec<String> {
    let fits = |line: &str| text_width(line, size, style) <= width;
    let mut lines = Vec::new();
    for part in text.split('\n') {
        let mut line = String::new();
        for word in part.split_whitespace() {
            let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if fits(&longer) {
                line = longer;
                continue;
            }
            if !line.is_empty() {
                lines.push(std::mem::take(&mut line));
            }
            for letter in word.chars() {
                let longer = format!("{line}{letter}");
                if !fits(&longer) && !line.is_empty() {
                    lines.push(std::mem::take(&mut line));
                }
                line.push(letter);
            }
        }
        lines.push(line);
    }
    lines
}

/// The longest start of a text that fits, with three dots where something is left out.
pub(crate) fn cut(text: &str, size: f32, style: Style, width: f32) -> String {
    if text_width(text, size, style) <= width {
        return text.to_owned();
    }
    let mut short = text.to_owned();
    while !short.is_empty() && text_width(&format!("{short}..."), size, style) > width {
        short.pop();
    }
    format!("{}...", short.trim_end())
}

/// Writes a line whose middle height is at `at`, from there to the right.
pub(crate) fn write(marks: &mut Marks, at: P, text: &str, size: f32, style: Style) {
    if !text.is_empty() {
        let mark = TextMark::new(at, text, size, Tone::Ink).anchor(Anchor::Start);
        marks.text(TextMark { style, ..mark });
    }
}

/// Writes lines below one another, the first with its middle height at `at`; gives how far down they reach.
pub(crate) fn write_lines(
    marks: &mut Marks,
    at: P,
    lines: impl IntoIterator<Item = String>,
    size: f32,
    style: Style,
) -> f32 {
    let mut down = 0.0;
    for line in lines {
        write(marks, at.by(0.0, down), &line, size, style);
        down += size * LEADING;
    }
    down
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_no_wider_than_asked_and_nothing_is_lost() {
        let text = "A planning aid: the department decides. Donaudampfschifffahrtsgesellschaft";
        for width in [30.0, 80.0, 400.0] {
            let lines = wrap(text, BODY, Style::Plain, width);
            assert!(lines.iter().all(|l| text_width(l, BODY, Style::Plain) <= width), "{lines:?}");
            let letters = |s: &str| s.chars().filter(|c| !c.is_whitespace()).collect::<String>();
            assert_eq!(letters(&lines.concat()), letters(text));
        }
    }

    #[test]
    fn what_is_cut_says_so() {
        assert_eq!(cut("short", BODY, Style::Plain, 100.0), "short");
        let cut = cut("rather a long name", BODY, Style::Plain, 40.0);
        assert!(cut.ends_with("...") && text_width(&cut, BODY, Style::Plain) <= 40.0, "{cut}");
    }
}
