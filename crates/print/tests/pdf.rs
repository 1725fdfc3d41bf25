//! The PDF as an independent reader sees it.

mod common;

use common::{SAME, all_kinds, matrix, operations, reals};
use drawing::{Anchor, Marks, P, Palette, Stroke, TextMark, Tone, text_width};
use lopdf::{Document, Object};
use print::{Info, Page, pdf};

const TABLOID: (f32, f32) = (1224.0, 792.0);
const A4: (f32, f32) = (595.28, 841.89);

fn info() -> Info {
    Info {
        title: "Basement ½".to_owned(),
        author: "The owner".to_owned(),
        subject: "Existing and new".to_owned(),
        keywords: vec!["plan".to_owned(), "egress".to_owned()],
        date: Some((2026, 2, 28)),
    }
}

fn write(marks: &Marks, size: (f32, f32)) -> Vec<u8> {
    pdf(&[Page { size, marks }], &info(), Palette::Print, &mut |_| {}).unwrap()
}

fn read(marks: &Marks, size: (f32, f32)) -> Document {
    Document::load_mem(&write(marks, size)).unwrap()
}

#[test]
fn pages_have_their_exact_sizes_and_are_counted() {
    let marks = all_kinds();
    let pages = [Page { size: TABLOID, marks: &marks }, Page { size: A4, marks: &marks }];
    let mut done = Vec::new();
    let bytes = pdf(&pages, &info(), Palette::Print, &mut |n| done.push(n)).unwrap();
    assert_eq!(done, [1, 2]);
    let file = Document::load_mem(&bytes).unwrap();
    let boxes: Vec<_> = file
        .get_pages()
        .values()
        .map(|id| {
            let page = file.get_dictionary(*id).unwrap();
            assert!(page.get(b"Rotate").is_err() && page.get(b"UserUnit").is_err());
            reals(page.get(b"MediaBox").unwrap().as_array().unwrap())
        })
        .collect();
    assert_eq!(boxes, [[0.0, 0.0, 1224.0, 792.0], [0.0, 0.0, 595.28, 841.89]]);
}

#[test]
fn both_faces_are_embedded_as_subsets() {
    let file = read(&all_kinds(), TABLOID);
    let page = file.get_pages()[&1];
    let mut names = Vec::new();
    for font in file.get_page_fonts(page).unwrap().values() {
        let below = font.get(b"DescendantFonts").unwrap().as_array().unwrap();
        let below = file.get_dictionary(below[0].as_reference().unwrap()).unwrap();
        let id = below.get(b"FontDescriptor").unwrap().as_reference().unwrap();
        let descriptor = file.get_dictionary(id).unwrap();
        let program = [&b"FontFile2"[..], b"FontFile3"]
            .iter()
            .find_map(|key| descriptor.get(key).ok())
            .expect("an embedded font");
        let program = file.get_object(program.as_reference().unwrap()).unwrap();
        let program = program.as_stream().unwrap().decompressed_content().unwrap();
        // The whole regular face has more than 700 KB.
        assert!((500..60_000).contains(&program.len()), "{}", program.len());
        assert!(font.get(b"ToUnicode").is_ok());
        let name = descriptor.get(b"FontName").unwrap().as_name().unwrap();
        names.push(String::from_utf8(name.to_vec()).unwrap().split_once('+').unwrap().1.to_owned());
    }
    names.sort();
    names.dedup();
    assert_eq!(names, ["DejaVuSans", "DejaVuSans-Bold"]);
}

#[test]
fn text_is_text() {
    let words = ["12′ 6½″ × 3⅜″ ≥ 70°", "AVATAR office fi ffl ''\"\"", "Ünïç ¼ – ²", "-1 × ⅞"];
    let mut marks = Marks::new();
    for (i, text) in words.iter().enumerate() {
        let at = P::new(300.0, 50.0 + 40.0 * i as f32);
        let mark = TextMark::new(at, *text, 12.0, Tone::Ink).angle(90.0 * i as f32);
        marks.text(if i == 1 { mark.bold() } else { mark });
    }
    let file = read(&marks, TABLOID);
    let text = file.extract_text(&[1]).unwrap();
    // The reader ends every run with a space of its own.
    let lines = text.lines().map(str::trim_end).filter(|l| !l.is_empty());
    assert_eq!(lines.collect::<Vec<_>>(), words);
}

#[test]
fn a_line_stands_where_it_was_put() {
    let mut marks = Marks::new();
    marks.line([P::new(72.0, 36.5), P::new(720.25, 600.0)], Stroke::solid(Tone::Ink, 1.5));
    let file = read(&marks, TABLOID);
    let mut seen = Vec::new();
    for (ctm, op) in operations(&file, 1) {
        if matches!(op.operator.as_str(), "m" | "l") {
            let p = reals(&op.operands);
            seen.push(ctm.apply(p[0], p[1]));
        }
        if op.operator == "w" {
            assert_eq!(reals(&op.operands), [1.5]);
            assert_eq!(ctm.area(), 1.0);
        }
    }
    // PDF's y points up from the bottom of the sheet.
    assert_eq!(seen, [(72.0, 792.0 - 36.5), (720.25, 792.0 - 600.0)]);
}

#[test]
fn corners_dashes_and_holes_are_as_in_the_svg() {
    let mut marks = Marks::new();
    let ring = |a: f32, b: f32| vec![P::new(a, a), P::new(b, a), P::new(b, b), P::new(a, b)];
    marks.0.push(drawing::Mark::Fill {
        rings: vec![ring(10.0, 90.0), ring(30.0, 60.0)],
        tone: Tone::Ink,
        alpha: 0.5,
    });
    marks.outline(ring(100.0, 200.0), Stroke::dashed(Tone::Ink, 2.0, 6.0, 3.0));
    let file = read(&marks, TABLOID);
    let ops: Vec<_> = operations(&file, 1).into_iter().map(|(_, op)| op).collect();
    let of = |name: &str| ops.iter().filter(|op| op.operator == name).collect::<Vec<_>>();
    assert_eq!(of("f*").len(), 1, "one fill by the even-odd rule");
    assert_eq!(of("f").len(), 0);
    assert_eq!(of("S").len(), 1);
    assert_eq!(of("h").len(), 3, "three closed rings");
    assert_eq!(reals(of("d")[0].operands[0].as_array().unwrap()), [6.0, 3.0]);
    // SVG's default limit is 4; PDF's is 10.
    assert_eq!(reals(&of("M")[0].operands), [4.0]);
    let joins: Vec<_> = of("j").iter().flat_map(|op| reals(&op.operands)).collect();
    assert!(joins.iter().all(|join| *join == 0.0), "miter joins: {joins:?}");
    let state = of("gs")[0].operands[0].as_name().unwrap();
    let (resources, ids) = file.get_page_resources(file.get_pages()[&1]).unwrap();
    let resources = resources.unwrap_or_else(|| file.get_dictionary(ids[0]).unwrap());
    let states = file.dereference(resources.get(b"ExtGState").unwrap()).unwrap().1;
    let state = file.dereference(states.as_dict().unwrap().get(state).unwrap()).unwrap().1;
    assert_eq!(reals(&[state.as_dict().unwrap().get(b"ca").unwrap().clone()]), [0.5]);
}

#[test]
fn letters_advance_by_the_measured_width_and_anchors_hold() {
    // "AVAT" and "To" are pairs that kern.
    for (anchor, share) in [(Anchor::Start, 0.0), (Anchor::Middle, 0.5), (Anchor::End, 1.0)] {
        let text = TextMark::new(P::new(400.0, 300.0), "AVAT To", 20.0, Tone::Ink).anchor(anchor);
        let mut marks = Marks::new();
        marks.text(text.clone());
        let file = read(&marks, TABLOID);
        let ops = operations(&file, 1);
        let (ctm, tm) = ops.iter().find(|(_, op)| op.operator == "Tm").unwrap();
        let (x, y) = ctm.apply(reals(&tm.operands)[4], reals(&tm.operands)[5]);
        let width = text_width("AVAT To", 20.0, text.style);
        assert!((x - (400.0 - share * width)).abs() < 0.01, "{anchor:?}: {x}");
        let drop = 20.0 * drawing::fonts::BASELINE_DROP;
        assert!((y - (792.0 - 300.0 - drop)).abs() < 0.01, "{y}");
        // The widths that the font declares, in 1/1000 of the size, are all that moves the pen.
        let (_, shown) = ops.iter().find(|(_, op)| op.operator == "TJ").unwrap();
        for part in shown.operands[0].as_array().unwrap() {
            let moved = reals(std::slice::from_ref(part));
            assert!(moved.iter().all(|v| v.abs() < 1.0), "kerned by {moved:?}");
        }
    }
}

#[test]
fn a_quarter_turn_is_counter_clockwise() {
    let mut marks = Marks::new();
    let text = TextMark::new(P::new(100.0, 200.0), "up", 10.0, Tone::Ink).angle(90.0);
    marks.text(text.anchor(Anchor::Start));
    let file = read(&marks, TABLOID);
    let ops = operations(&file, 1);
    let (ctm, tm) = ops.iter().find(|(_, op)| op.operator == "Tm").unwrap();
    let all = matrix(&reals(&tm.operands)).then(*ctm);
    let (origin, along) = (all.apply(0.0, 0.0), all.apply(1.0, 0.0));
    let up = (along.0 - origin.0, along.1 - origin.1);
    assert!(up.0.abs() < 1e-4 && (up.1 - 1.0).abs() < 1e-4, "reads up the sheet: {up:?}");
    // The baseline is to the right of the middle of letters that stand on their left side.
    let drop = 10.0 * drawing::fonts::BASELINE_DROP;
    assert!((origin.0 - (100.0 + drop)).abs() < 0.01, "{origin:?}");
    assert!((origin.1 - (792.0 - 200.0)).abs() < 0.01, "{origin:?}");
}

#[test]
fn the_viewer_is_asked_not_to_scale() {
    let bytes = write(&all_kinds(), TABLOID);
    let file = Document::load_mem(&bytes).unwrap();
    let preferences = file.catalog().unwrap().get(b"ViewerPreferences").unwrap();
    let scaling = preferences.as_dict().unwrap().get(b"PrintScaling").unwrap();
    assert_eq!(scaling.as_name().unwrap(), b"None");
    assert!(bytes.ends_with(b"%%EOF\n"));
    assert!(file.trailer.get(b"Info").is_ok());
}

#[test]
fn the_information_is_what_was_given_and_no_clock_is_read() {
    let field = |file: &Document, key: &[u8]| {
        let id = file.trailer.get(b"Info").unwrap().as_reference().unwrap();
        let value = file.get_dictionary(id).unwrap().get(key).ok()?.clone();
        Some(lopdf::decode_text_string(&value).unwrap())
    };
    let file = read(&all_kinds(), TABLOID);
    assert_eq!(field(&file, b"Title").as_deref(), Some("Basement ½"));
    assert_eq!(field(&file, b"Author").as_deref(), Some("The owner"));
    assert_eq!(field(&file, b"Subject").as_deref(), Some("Existing and new"));
    assert_eq!(field(&file, b"Keywords").as_deref(), Some("plan, egress"));
    assert!(field(&file, b"CreationDate").unwrap().starts_with("D:20260228"));

    let marks = all_kinds();
    let pages = [Page { size: A4, marks: &marks }];
    let plain = Info { title: "t".to_owned(), ..Info::default() };
    let bytes = pdf(&pages, &plain, Palette::Print, &mut |_| {}).unwrap();
    let file = Document::load_mem(&bytes).unwrap();
    for key in [&b"CreationDate"[..], b"ModDate", b"Author", b"Subject", b"Keywords"] {
        assert_eq!(field(&file, key), None);
    }
    let bare = pdf(&pages, &Info::default(), Palette::Print, &mut |_| {}).unwrap();
    assert_eq!(Document::load_mem(&bare).unwrap().get_pages().len(), 1);
}

#[test]
fn two_runs_give_the_same_bytes() {
    let first = write(&all_kinds(), TABLOID);
    assert_eq!(first, write(&all_kinds(), TABLOID));
    assert_ne!(first, write(&all_kinds(), A4));
}

#[test]
fn the_matrices_of_these_tests_multiply_as_pdf_says() {
    // ISO 32000-1, 8.3.3: a quarter turn, then a move.
    let turned = matrix(&[0.0, 1.0, -1.0, 0.0, 5.0, 7.0]);
    assert_eq!(turned.apply(2.0, 3.0), (2.0, 9.0));
    assert_eq!(SAME.then(turned).apply(2.0, 3.0), (2.0, 9.0));
    assert_eq!(reals(&[Object::Integer(2), Object::Real(0.5)]), [2.0, 0.5]);
}
