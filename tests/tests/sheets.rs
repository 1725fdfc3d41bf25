//! The permit sets of the demo plans: nothing off the paper, no word on another, figures that add up, true scale.

use std::sync::Arc;

use drawing::{Mark, Marks, P, TextMark};
use measure::System;
use plan::Plan;
use rules::Book;
use sheets::{Join, Options, Paper, Set, Sheet, Source};

fn set(plan: &Plan, paper: Paper, system: System) -> Set {
    set_of(plan, &Options { paper, system, ..Options::default() })
}

fn set_of(plan: &Plan, options: &Options) -> Set {
    let facts = space::derive(&Arc::new(plan.clone()));
    let book = Book::of(&plan.site);
    let findings = rules::check(&facts, &book);
    let source = Source { facts: &facts, findings: &findings, book: &book };
    sheets::set(&source, options)
}

/// Both plans, and all trades, together.
const TOGETHER: Join = Join { plans: true, trades: true };

/// The demo plans on every paper, in feet and in millimetres; some also with things drawn together.
fn all(mut each: impl FnMut(&str, &Set)) {
    for (name, plan) in whole::demo::all() {
        for paper in Paper::ALL {
            for system in [System::Imperial, System::Metric] {
                let set = set(&plan, paper, system);
                each(&format!("{name} {} {system:?}", paper.word()), &set);
            }
        }
        for paper in [Paper::Tabloid, Paper::ArchD] {
            for one_sheet in [false, true] {
                let options = Options { paper, join: TOGETHER, one_sheet, ..Options::default() };
                let set = set_of(&plan, &options);
                each(&format!("{name} {} together, one sheet {one_sheet}", paper.word()), &set);
            }
        }
    }
}

#[test]
fn nothing_is_off_the_paper() {
    all(|name, set| {
        for sheet in &set.sheets {
            // What a printer leaves blank: a quarter of an inch.
            let (left, right) = (18.0, sheet.size.0 - 18.0);
            let (top, bottom) = (18.0, sheet.size.1 - 18.0);
            for mark in &sheet.marks.0 {
                let out = |p: &P| p.x < left || p.x > right || p.y < top || p.y > bottom;
                let out = mark.points().into_iter().find(out);
                assert_eq!(out, None, "{name}: {} {mark:?}", sheet.number);
            }
        }
    });
}

/// Whether two boxes of words share more than a hair.
fn overlap(a: &TextMark, b: &TextMark) -> bool {
    // The capitals alone: two thirds of the line's height.
    let ring = |t: &TextMark| {
        let [lt, rt, rb, lb] = t.corners();
        let (up, down) = (0.22, 0.78);
        [lt.towards(lb, up), rt.towards(rb, up), rt.towards(rb, down), lt.towards(lb, down)]
    };
    let (a, b) = (ring(a), ring(b));
    let parted = |of: &[P; 4]| {
        (0..4).any(|i| {
            let (p, q) = (of[i], of[(i + 1) % 4]);
            let (nx, ny) = (q.y - p.y, p.x - q.x);
            let span = |ring: &[P; 4]| {
                ring.iter()
                    .map(|p| p.x * nx + p.y * ny)
                    .fold((f32::MAX, f32::MIN), |(l, h), d| (l.min(d), h.max(d)))
            };
            let ((a0, a1), (b0, b1)) = (span(&a), span(&b));
            let hair = 0.1 * (nx * nx + ny * ny).sqrt();
            a1 <= b0 + hair || b1 <= a0 + hair
        })
    };
    !parted(&a) && !parted(&b)
}

#[test]
fn no_word_lies_on_another() {
    let mut words = 0;
    all(|name, set| {
        for sheet in &set.sheets {
            let texts: Vec<&TextMark> = sheet.marks.texts().collect();
            words += texts.len();
            for (i, a) in texts.iter().enumerate() {
                for b in &texts[..i] {
                    assert!(
                        !overlap(a, b),
                        "{name}: {} \"{}\" {:?} lies on \"{}\" {:?}",
                        sheet.number,
                        a.text,
                        a.at,
                        b.text,
                        b.at
                    );
                }
            }
        }
    });
    assert!(words > 20_000, "{words}");
}

#[test]
fn no_text_is_upside_down() {
    all(|name, set| {
        for text in set.sheets.iter().flat_map(|s| s.marks.texts()) {
            assert!(text.angle > -90.0 && text.angle <= 90.1, "{name}: {text:?}");
        }
    });
}

/// The figures of one string.
fn figures(sheet: &Sheet, origin: &str) -> Vec<String> {
    sheet.marks.under(origin).texts().map(|t| t.text.clone()).collect()
}

#[test]
fn the_figures_of_every_string_add_up_to_the_whole() {
    let read = |text: &str| {
        measure::read_len(text, measure::BareUnit::Inches).unwrap_or_else(|e| panic!("{text}: {e}"))
    };
    let mut strings = 0;
    for (name, plan) in whole::demo::all() {
        let set = set(&plan, Paper::ArchD, System::Imperial);
        for sheet in set.sheets.iter().filter(|s| s.number.starts_with("A-10")) {
            for edge in ["South", "East", "North", "West"] {
                let sums: Vec<measure::Len> = (0..3)
                    .map(|row| figures(sheet, &format!("string {edge} {row}")))
                    .filter(|figures| !figures.is_empty())
                    .map(|figures| figures.iter().fold(measure::Len::ZERO, |all, f| all + read(f)))
                    .collect();
                assert!(!sums.is_empty(), "{name} {} has no string {edge}", sheet.number);
                assert!(sums.windows(2).all(|s| s[0] == s[1]), "{name} {edge}: {sums:?}");
                strings += sums.len();
            }
        }
    }
    assert!(strings > 60, "{strings}");
}

#[test]
fn the_figures_along_a_wall_at_an_angle_add_up_to_its_face() {
    let plan = whole::demo::all().into_iter().find(|(n, _)| n.contains("large")).expect("a demo").1;
    let facts = space::derive(&Arc::new(plan.clone()));
    let set = set(&plan, Paper::ArchD, System::Imperial);
    let sheet = set.sheets.iter().find(|s| s.kind == "proposed-plan").expect("a plan");
    let skew = facts.walls.iter().filter(|w| {
        let d = w.line.dir();
        w.kind == space::WallKind::Shell && d.x != 0 && d.y != 0
    });
    let mut walls = 0;
    for wall in skew {
        let figures = figures(sheet, &format!("string along {}", wall.id.0));
        let read = |t: &String| measure::read_len(t, measure::BareUnit::Inches).expect("a length");
        let sum = figures.iter().map(read).fold(measure::Len::ZERO, |all, len| all + len);
        assert_eq!(sum, wall.right.len().round_to(measure::Len::sixty_fourths(4)), "{}", wall.id.0);
        walls += 1;
    }
    assert!(walls >= 4, "{walls}");
}

#[test]
fn the_figures_under_a_section_add_up_to_the_whole() {
    let mut sections = 0;
    for (name, plan) in whole::demo::all() {
        let set = set(&plan, Paper::ArchD, System::Imperial);
        for sheet in set.sheets.iter().filter(|s| s.kind == "building-section") {
            let sum = |row| {
                let figures = figures(sheet, &format!("string South {row}"));
                let read = |text: &String| {
                    measure::read_len(text, measure::BareUnit::Inches).expect("a length")
                };
                figures.iter().map(read).fold(measure::Len::ZERO, |all, len| all + len)
            };
            assert!(sum(0) > measure::Len::ZERO, "{name}");
            assert_eq!(sum(0), sum(1), "{name}");
            sections += 1;
        }
    }
    assert!(sections >= 2, "{sections}");
}

#[test]
fn a_plan_is_at_the_scale_that_it_says() {
    let plan =
        whole::demo::all().into_iter().find(|(n, _)| n.contains("passes")).expect("a demo").1;
    // The foundation is 37 ft 4 in wide, its thickness included.
    for (paper, word, points_per_foot) in [
        (Paper::ArchC, "1/4\" = 1'-0\"", 18.0),
        (Paper::Tabloid, "3/16\" = 1'-0\"", 13.5),
        (Paper::Letter, "1/8\" = 1'-0\"", 9.0),
    ] {
        let set = set(&plan, paper, System::Imperial);
        let sheet = set.sheets.iter().find(|s| s.kind == "proposed-plan").expect("a plan");
        assert_eq!(sheet.scale, Some(word));
        let shell = sheet.marks.under("shell outline");
        let xs: Vec<f32> = shell.0.iter().flat_map(Mark::points).map(|p| p.x).collect();
        let width =
            xs.iter().fold(f32::MIN, |a, b| a.max(*b)) - xs.iter().fold(f32::MAX, |a, b| a.min(*b));
        let expected = (37.0 + 4.0 / 12.0) * points_per_foot;
        assert!((width - expected).abs() < 0.01, "{paper:?}: {width} {expected}");
    }
}

#[test]
fn everything_can_stand_on_one_sheet_that_is_large_enough() {
    let plan =
        whole::demo::all().into_iter().find(|(n, _)| n.contains("passes")).expect("a demo").1;
    let many = set(&plan, Paper::ArchD, System::Imperial);
    let of = |paper| {
        let options = Options { paper, join: TOGETHER, one_sheet: true, ..Options::default() };
        set_of(&plan, &options)
    };
    let one = of(Paper::ArchD);
    assert!(!one.crowded);
    assert_eq!(one.sheets.len(), 1);
    // What stands on the sheets stands on the one.
    let texts = |set: &Set, kind: &str| -> Vec<String> {
        let of_kind = set.sheets.iter().filter(|s| s.kind == kind);
        of_kind.flat_map(|s| s.marks.texts()).map(|t| t.text.clone()).collect()
    };
    let all = texts(&one, "one-sheet");
    for kind in ["tables", "stair-section", "site-sketch"] {
        for text in texts(&many, kind).iter().filter(|t| t.contains('"') && !t.contains("Scale")) {
            assert!(all.contains(text), "{kind}: {text}");
        }
    }
    for caption in ["Existing basement, and what is removed", "Proposed basement", "Section A-A"] {
        assert!(all.iter().any(|t| t == caption), "{caption}");
    }
    // A letter sheet is too small; the set says so and is whole.
    let letter = of(Paper::Letter);
    assert!(letter.crowded && letter.sheets.len() > 8);
}

#[test]
fn what_is_drawn_together_has_one_sheet_and_one_scale() {
    for (name, of) in whole::demo::all() {
        let options = Options { join: TOGETHER, ..Options::default() };
        let set = set_of(&of, &options);
        let kinds: Vec<&str> = set.sheets.iter().map(|s| s.kind).collect();
        for gone in ["existing-plan", "electrical-plan", "mechanical-plan", "plumbing-plan"] {
            assert!(!kinds.contains(&gone), "{name}: {kinds:?}");
        }
        let plan = set.sheets.iter().find(|s| s.kind == "proposed-plan").expect("a plan");
        let scales: Vec<&str> = plan
            .marks
            .texts()
            .filter_map(|t| t.text.strip_prefix("Scale ").filter(|s| !s.is_empty()))
            .collect();
        assert!(scales.windows(2).all(|s| s[0] == s[1]), "{name}: {scales:?}");
        let apart = set_of(&of, &Options::default());
        let any = apart.sheets.iter().any(|s| s.kind == "electrical-plan");
        assert_eq!(kinds.contains(&"services-plan"), any, "{name}: {kinds:?}");
    }
}

#[test]
fn a_sheet_with_nothing_to_show_is_left_out_and_said_to_be() {
    let empty = Plan::default();
    let set = set(&empty, Paper::Tabloid, System::Imperial);
    let kinds: Vec<&str> = set.sheets.iter().map(|s| s.kind).collect();
    assert_eq!(kinds, ["cover", "notes"]);
    assert_eq!(set.left_out.len(), 11);
    let cover: String = set.sheets[0].marks.texts().map(|t| t.text.clone() + " ").collect();
    assert!(cover.contains("No sheet"), "{cover}");
}

#[test]
fn an_amendment_of_ones_own_stands_in_the_notes_with_its_reason() {
    let mut plan =
        whole::demo::all().into_iter().find(|(n, _)| n.contains("passes")).expect("a demo").1;
    let own = plan::Amendment {
        limit: "escape-sill".to_owned(),
        figure: "48 in".to_owned(),
        reason: "letter of the department".to_owned(),
    };
    plan.site.amendments.push(own);
    let set = set(&plan, Paper::ArchD, System::Imperial);
    let notes = set.sheets.iter().find(|s| s.kind == "notes").expect("notes");
    let text: String = notes.marks.texts().map(|t| format!("{} ", t.text)).collect();
    assert!(text.contains("48 in. Reason: letter of the department"), "{text}");
}

/// Every text of a sheet's marks, so that a change of a demo's sheets is seen.
#[test]
fn what_stands_on_the_sheets_is_what_the_plan_says() {
    let plan =
        whole::demo::all().into_iter().find(|(n, _)| n.contains("passes")).expect("a demo").1;
    let set = set(&plan, Paper::Tabloid, System::Imperial);
    let texts = |kind: &str| -> String {
        let of_kind = set.sheets.iter().filter(|s| s.kind == kind);
        of_kind.flat_map(|s| s.marks.texts()).map(|t| format!("{}\n", t.text)).collect()
    };
    let tables = texts("tables");
    // 30 x 44 in are 1,320 sq in: 9.1 sq ft; the sill is 40 in above the slab, 39 1/2 in above the floor.
    for text in ["30\" x 44\" = 9.1 sq ft", "39 1/2\"", "N26", "D33", "155.1 sq ft"] {
        assert!(tables.contains(text), "{text} in {tables}");
    }
    let plan_sheet = texts("proposed-plan");
    for text in ["N26 escape", "37' 4\"", "Bedroom", "P1", "U1"] {
        assert!(plan_sheet.contains(text), "{text} in {plan_sheet}");
    }
    assert!(texts("stair-section").contains("14 of 7 1/2\""));
    let marks: &Marks = &set.sheets[0].marks;
    assert!(marks.texts().any(|t| t.text == "14 Quarrystone Lane, Fernhollow"));
}
