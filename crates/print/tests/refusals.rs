//! What can't be drawn is an error that says where, and never a panic.

use drawing::{Anchor, Mark, Marks, Origin, P, Palette, Stroke, Style, TextMark, Tone};
use print::{Error, Info, MARK_LIMIT, PAGE_LIMIT, Page, pdf, png};
use proptest::collection::vec;
use proptest::prelude::*;

const SIZE: (f32, f32) = (100.0, 100.0);

fn write(pages: &[Page<'_>]) -> Result<Vec<u8>, Error> {
    pdf(pages, &Info::default(), Palette::Light, &mut |_| {})
}

#[test]
fn the_second_page_is_named() {
    let (good, mut bad) = (Marks::new(), Marks::new());
    bad.fill([P::new(0.0, 0.0), P::new(9.0, 0.0), P::new(0.0, 9.0)], Tone::Ink);
    bad.line([P::new(0.0, f32::INFINITY), P::new(1.0, 1.0)], Stroke::solid(Tone::Ink, 1.0));
    let pages = [Page { size: SIZE, marks: &good }, Page { size: SIZE, marks: &bad }];
    let error = write(&pages).unwrap_err();
    assert_eq!(error, Error::Number { page: 2, mark: 2, number: f32::INFINITY });
    assert!(error.to_string().starts_with("page 2: mark 2 "), "{error}");
    assert_eq!(write(&[]), Err(Error::NoPage));
}

#[test]
fn a_letter_that_the_font_lacks_is_named_with_its_text() {
    let mut marks = Marks::new();
    marks.text(TextMark::new(P::new(9.0, 9.0), "Bath", 9.0, Tone::Ink));
    marks.text(TextMark::new(P::new(9.0, 9.0), "Bath 浴", 9.0, Tone::Ink));
    let page = Page { size: SIZE, marks: &marks };
    let error = Error::Glyph { page: 1, text: "Bath 浴".to_owned(), letter: '浴' };
    assert_eq!(write(&[page]), Err(error.clone()));
    assert_eq!(png(&page, Palette::Light, 72.0), Err(error));
}

#[test]
fn a_sheet_of_no_size_is_refused() {
    let marks = Marks::new();
    for side in [0.0, -1.0, f32::NAN, f32::INFINITY, PAGE_LIMIT + 1.0] {
        for size in [(side, 10.0), (10.0, side)] {
            let page = Page { size, marks: &marks };
            assert!(matches!(write(&[page]), Err(Error::Size { page: 1, .. })), "{size:?}");
            let result = png(&page, Palette::Light, 1.0);
            assert!(matches!(result, Err(Error::Size { page: 1, .. })), "{size:?}");
        }
    }
    assert!(write(&[Page { size: (PAGE_LIMIT, PAGE_LIMIT), marks: &marks }]).is_ok());
}

/// Ordinary numbers for the most part, and every odd one.
fn number() -> impl Strategy<Value = f32> {
    prop_oneof![
        40 => -200.0f32..200.0,
        4 => Just(0.0f32),
        2 => -MARK_LIMIT..MARK_LIMIT,
        1 => any::<f32>(),
        1 => prop_oneof![Just(f32::NAN), Just(f32::INFINITY), Just(f32::MIN_POSITIVE)],
    ]
}

fn point() -> impl Strategy<Value = P> {
    (number(), number()).prop_map(|(x, y)| P::new(x, y))
}

fn stroke() -> impl Strategy<Value = Stroke> {
    let dash = proptest::option::of((number(), number()));
    (number(), dash).prop_map(|(width, dash)| Stroke { tone: Tone::New, width, dash })
}

fn text() -> impl Strategy<Value = TextMark> {
    let anchor = prop_oneof![Just(Anchor::Start), Just(Anchor::Middle), Just(Anchor::End)];
    let words = prop_oneof![4 => "[ -~½′″\t\n\u{7}]{0,12}", 1 => ".{0,4}"];
    (point(), words, number(), any::<bool>(), anchor, number(), any::<bool>()).prop_map(
        |(at, text, size, bold, anchor, angle, plate)| TextMark {
            style: if bold { Style::Bold } else { Style::Plain },
            anchor,
            angle,
            plate: plate.then_some(Tone::Paper),
            ..TextMark::new(at, text, size, Tone::Ink)
        },
    )
}

fn mark() -> impl Strategy<Value = Mark> {
    prop_oneof![
        (vec(vec(point(), 0..5), 0..3), number()).prop_map(|(rings, alpha)| Mark::Fill {
            rings,
            tone: Tone::Stop,
            alpha
        }),
        (vec(point(), 0..5), any::<bool>(), stroke())
            .prop_map(|(points, closed, stroke)| Mark::Line { points, closed, stroke }),
        (vec((point(), point()), 0..4), stroke())
            .prop_map(|(pairs, stroke)| Mark::Segments { pairs, stroke }),
        (point(), number(), any::<bool>(), proptest::option::of(stroke())).prop_map(
            |(centre, radius, fill, stroke)| {
                Mark::Circle { centre, radius, fill: fill.then_some(Tone::Tape), stroke }
            }
        ),
        text().prop_map(Mark::Text),
        Just(Mark::Begin(Origin("a".to_owned()))),
        Just(Mark::End),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn any_marks_make_a_readable_file_or_an_error(marks in vec(mark(), 0..4)) {
        let marks = Marks(marks);
        let page = Page { size: SIZE, marks: &marks };
        match write(&[page]) {
            Ok(bytes) => {
                let file = lopdf::Document::load_mem(&bytes);
                prop_assert_eq!(file.map(|f| f.get_pages().len()).ok(), Some(1));
                prop_assert_eq!(write(&[page]), Ok(bytes));
                let picture = png(&page, Palette::Light, 72.0);
                prop_assert!(picture.is_ok(), "{:?}", picture.err());
            }
            Err(Error::Number { page, number, .. }) => {
                prop_assert_eq!(page, 1);
                prop_assert!(!number.is_finite() || number.abs() > MARK_LIMIT);
            }
            Err(Error::Glyph { page, .. }) => prop_assert_eq!(page, 1),
            Err(other) => prop_assert!(false, "{}", other),
        }
    }
}
