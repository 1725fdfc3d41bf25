//! The SVG backend: one `match`, no layout. Numbers have two decimals, so equal lists give equal files.

use std::fmt::Write;

use crate::fonts::{BASELINE_DROP, FAMILIES};
use crate::{Anchor, Mark, Marks, P, Palette, Stroke, Style, TextMark, Tone};

/// The marks as an SVG document of `size` (width, height) points. Text stays text. A stray `End` is
/// left out and an open `Begin` is closed, so the document is always well formed.
pub fn write(marks: &Marks, size: (f32, f32), palette: Palette) -> String {
    let (w, h) = (num(size.0), num(size.1));
    document(marks, size, palette, format_args!("width=\"{w}\" height=\"{h}\""))
}

/// The marks as an SVG document for paper: the same as [`write`], but its width and height are in
/// inches (`width="17in"`), so it prints at its true size, while its user units stay points. Letters
/// stand where [`crate::text_width`] measures them: no kerning, and spaces are kept.
pub fn write_paper(marks: &Marks, size: (f32, f32), palette: Palette) -> String {
    let (w, h) = (inches(size.0), inches(size.1));
    let head = format_args!(
        "width=\"{w}in\" height=\"{h}in\" xml:space=\"preserve\" style=\"font-kerning:none\""
    );
    document(marks, size, palette, head)
}

fn document(
    marks: &Marks,
    size: (f32, f32),
    palette: Palette,
    head: std::fmt::Arguments<'_>,
) -> String {
    let mut svg = Svg { out: String::with_capacity(marks.0.len() * 96), palette };
    let (w, h) = (num(size.0), num(size.1));
    svg.put(format_args!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" {head} \
         viewBox=\"0 0 {w} {h}\" font-family=\"{FAMILIES}\" stroke-linejoin=\"miter\">\n"
    ));
    let mut depth = 0usize;
    for mark in &marks.0 {
        match mark {
            Mark::Fill { rings, tone, alpha } => svg.fill(rings, *tone, *alpha),
            Mark::Line { points, closed, stroke } => {
                svg.put(format_args!("<path d=\"{}\"", path(points, *closed)));
                svg.put(format_args!(" fill=\"none\""));
                svg.stroke(stroke);
                svg.put(format_args!("/>\n"));
            }
            Mark::Segments { pairs, stroke } => {
                svg.put(format_args!("<path d=\""));
                for (a, b) in pairs {
                    svg.put(format_args!("{}", path(&[*a, *b], false)));
                }
                svg.put(format_args!("\" fill=\"none\""));
                svg.stroke(stroke);
                svg.put(format_args!("/>\n"));
            }
            Mark::Circle { centre, radius, fill, stroke } => {
                svg.circle(*centre, *radius, *fill, stroke.as_ref());
            }
            Mark::Text(text) => svg.text(text),
            Mark::Begin(origin) => {
                depth += 1;
                svg.put(format_args!("<g data-origin=\"{}\">\n", escape(&origin.0)));
            }
            Mark::End if depth > 0 => {
                depth -= 1;
                svg.put(format_args!("</g>\n"));
            }
            Mark::End => {}
        }
    }
    for _ in 0..depth {
        svg.put(format_args!("</g>\n"));
    }
    svg.put(format_args!("</svg>\n"));
    svg.out
}

struct Svg {
    out: String,
    palette: Palette,
}

impl Svg {
    fn put(&mut self, text: std::fmt::Arguments<'_>) {
        // Writing to a String can't fail.
        let _ = self.out.write_fmt(text);
    }

    fn colour(&self, tone: Tone) -> String {
        let rgb = self.palette.rgb(tone);
        format!("#{:02x}{:02x}{:02x}", rgb.0, rgb.1, rgb.2)
    }

    fn fill(&mut self, rings: &[Vec<P>], tone: Tone, alpha: f32) {
        let d: String = rings.iter().map(|r| path(r, true)).collect();
        let colour = self.colour(tone);
        self.put(format_args!("<path d=\"{d}\" fill=\"{colour}\" fill-rule=\"evenodd\""));
        if alpha < 1.0 {
            self.put(format_args!(" fill-opacity=\"{}\"", num(alpha)));
        }
        self.put(format_args!("/>\n"));
    }

    fn stroke(&mut self, stroke: &Stroke) {
        let colour = self.colour(stroke.tone);
        self.put(format_args!(" stroke=\"{colour}\" stroke-width=\"{}\"", num(stroke.width)));
        if let Some((on, off)) = stroke.dash {
            self.put(format_args!(" stroke-dasharray=\"{} {}\"", num(on), num(off)));
        }
    }

    fn circle(&mut self, centre: P, radius: f32, fill: Option<Tone>, stroke: Option<&Stroke>) {
        let (x, y, r) = (num(centre.x), num(centre.y), num(radius));
        let colour = fill.map_or("none".to_owned(), |tone| self.colour(tone));
        self.put(format_args!("<circle cx=\"{x}\" cy=\"{y}\" r=\"{r}\" fill=\"{colour}\""));
        if let Some(stroke) = stroke {
            self.stroke(stroke);
        }
        self.put(format_args!("/>\n"));
    }

    fn text(&mut self, t: &TextMark) {
        if let Some(plate) = t.plate {
            self.fill(&[t.plate_corners().to_vec()], plate, 1.0);
        }
        let (x, y) = (num(t.at.x), num(t.at.y));
        let anchor = match t.anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let colour = self.colour(t.tone);
        self.put(format_args!(
            "<text x=\"{x}\" y=\"{}\" font-size=\"{}\" text-anchor=\"{anchor}\" fill=\"{colour}\"",
            num(t.at.y + t.size * BASELINE_DROP),
            num(t.size),
        ));
        match t.style {
            Style::Plain => {}
            Style::Bold => self.put(format_args!(" font-weight=\"bold\"")),
        }
        if t.angle != 0.0 {
            // SVG turns clockwise.
            self.put(format_args!(" transform=\"rotate({} {x} {y})\"", num(-t.angle)));
        }
        self.put(format_args!(">{}</text>\n", escape(&t.text)));
    }
}

fn path(points: &[P], closed: bool) -> String {
    let mut d = String::with_capacity(points.len() * 16);
    for (i, p) in points.iter().enumerate() {
        let _ = write!(d, "{}{} {}", if i == 0 { 'M' } else { 'L' }, num(p.x), num(p.y));
    }
    if closed {
        d.push('Z');
    }
    d
}

/// Two decimals; never `-0.00`, and zero for what is not a number.
fn num(v: f32) -> String {
    let v = if v.is_finite() { (v * 100.0).round() / 100.0 + 0.0 } else { 0.0 };
    format!("{v:.2}")
}

/// Points as inches: the points are rounded as [`num`] does, so the box and the paper have one shape.
fn inches(points: f32) -> String {
    let points = if points.is_finite() { (f64::from(points) * 100.0).round() } else { 0.0 };
    let text = format!("{:.6}", points / 7200.0);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Text with XML's own characters escaped and those that XML 1.0 forbids left out.
fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\t' | '\n' | '\r' => out.push(' '),
            '\u{0}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => {}
            _ => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::Origin;

    #[test]
    fn every_mark_is_written_and_read_back() {
        let mut marks = Marks::new();
        marks.group("note <X3> \"a\" & b", |m| {
            m.tint([P::new(0.0, 0.0), P::new(9.0, 0.0), P::new(0.0, 9.0)], Tone::StopFill, 0.5);
            m.line(
                [P::new(1.0, 1.0), P::new(-0.001, 2.0)],
                Stroke::dashed(Tone::Ink, 1.0, 3.0, 2.0),
            );
            m.segments(vec![(P::new(1.0, 2.0), P::new(3.0, 4.0))], Stroke::solid(Tone::Grid, 0.5));
            m.circle(P::new(5.0, 5.0), 2.0, None, Some(Stroke::solid(Tone::New, 1.0)));
            m.text(
                TextMark::new(P::new(4.0, 4.0), "12' 6\" < 13' & rising", 10.0, Tone::Ink)
                    .bold()
                    .angle(90.0)
                    .plate(Tone::Paper),
            );
        });
        let text = write(&marks, (100.0, 50.0), Palette::Light);
        let doc = roxmltree::Document::parse(&text).unwrap();
        let group = doc.descendants().find(|n| n.has_tag_name("g")).unwrap();
        assert_eq!(group.attribute("data-origin"), Some("note <X3> \"a\" & b"));
        let tags: Vec<_> =
            group.children().filter(|n| n.is_element()).map(|n| n.tag_name().name()).collect();
        assert_eq!(tags, ["path", "path", "path", "circle", "path", "text"]);
        let words = doc.descendants().find(|n| n.has_tag_name("text")).unwrap();
        assert_eq!(words.text(), Some("12' 6\" < 13' & rising"));
        assert_eq!(words.attribute("transform"), Some("rotate(-90.00 4.00 4.00)"));
        assert!(!text.contains("-0.00"));
    }

    #[test]
    fn paper_is_measured_in_inches_and_drawn_in_points() {
        let mut marks = Marks::new();
        marks.text(TextMark::new(P::new(4.0, 4.0), " A  V ", 10.0, Tone::Ink));
        let text = write_paper(&marks, (1224.0, 595.28), Palette::Print);
        let doc = roxmltree::Document::parse(&text).unwrap();
        let root = doc.root_element();
        assert_eq!(root.attribute("width"), Some("17in"));
        // 595.28 / 72 = 8.267777...
        assert_eq!(root.attribute("height"), Some("8.267778in"));
        assert_eq!(root.attribute("viewBox"), Some("0 0 1224.00 595.28"));
        let screen = write(&marks, (1224.0, 595.28), Palette::Print);
        assert_eq!(text.split_once(">\n").unwrap().1, screen.split_once(">\n").unwrap().1);
    }

    proptest! {
        #[test]
        fn any_text_and_any_nesting_is_well_formed(
            text in ".*", name in any::<String>(), ends in 0usize..3, begins in 0usize..3,
            size in any::<f32>(), x in any::<f32>(),
        ) {
            let mut list = vec![Mark::End; ends];
            list.extend(vec![Mark::Begin(Origin(name)); begins]);
            list.push(Mark::Text(TextMark::new(P::new(x, 1.0), text, size, Tone::Ink)));
            let svg = write(&Marks(list), (10.0, 10.0), Palette::Print);
            prop_assert!(roxmltree::Document::parse(&svg).is_ok(), "{}", svg);
        }
    }
}
