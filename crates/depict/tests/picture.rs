//! The whole picture: found marks, words that keep apart, toggles, well-formed SVG.

mod sample;

use std::sync::Arc;

use std::collections::BTreeSet;

use depict::{Blade, Caught, Picture, Poche, Scene, Show, View, picture};
use drawing::{Mark, P, Palette, TextMark, dump, svg};
use geometry::{Bounds, Pt};
use measure::{Len, System};
use proptest::prelude::*;
use rules::{Citation, Confidence, Finding, KeepClear, Phrase, Place, Severity};
use space::Facts;

const SIZE: (f32, f32) = (1180.0, 860.0);

fn facts() -> Facts {
    space::derive(&sample::basement())
}

fn whole(facts: &Facts) -> View {
    View::fit(Bounds::of(facts.walls.iter().flat_map(|w| w.outline.iter())), SIZE, 70.0)
}

fn finding(severity: Severity, places: Vec<Place>) -> Finding {
    Finding {
        rule: "panel-depth",
        severity,
        elements: vec![plan::ElementId(3)],
        title: Phrase::text("Panel: clear depth too small"),
        why: Phrase::text("One who works at it needs the room to step back."),
        measured: None,
        required: None,
        citation: Citation {
            slug: "panel-depth",
            text: "sample".to_owned(),
            edition: plan::Edition::E2021,
            confidence: Confidence::Derived,
        },
        assumed: Vec::new(),
        places,
        set_aside: None,
    }
}

/// No two words overlap, save the letters of a badge on its own badge.
fn words_keep_apart(picture: &Picture) {
    let texts: Vec<&TextMark> = picture.marks.texts().filter(|t| t.text != "?").collect();
    for (i, a) in texts.iter().enumerate() {
        for b in &texts[..i] {
            assert!(!overlap(&a.corners(), &b.corners()), "{:?} on {:?}", a.text, b.text);
        }
    }
}

/// Whether two rectangles, turned in any way, overlap by more than a hair: an independent test by
/// clipping one with the other's half planes and taking the area that is left.
fn overlap(a: &[P; 4], b: &[P; 4]) -> bool {
    let mut left: Vec<P> = a.to_vec();
    for i in 0..4 {
        let (p, q) = (b[i], b[(i + 1) % 4]);
        let side = |r: &P| (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
        let mut kept = Vec::new();
        for (j, r) in left.iter().enumerate() {
            let s = left[(j + 1) % left.len()];
            let (dr, ds) = (side(r), side(&s));
            if dr >= 0.0 {
                kept.push(*r);
            }
            if (dr >= 0.0) != (ds >= 0.0) {
                kept.push(r.towards(s, dr / (dr - ds)));
            }
        }
        left = kept;
    }
    let twice: f32 = left
        .iter()
        .enumerate()
        .map(|(i, p)| {
            let q = left[(i + 1) % left.len()];
            (p.x - left[0].x) * (q.y - left[0].y) - (q.x - left[0].x) * (p.y - left[0].y)
        })
        .sum();
    twice.abs() / 2.0 > 1.0
}

#[test]
fn every_standing_element_is_found_by_its_name() {
    let facts = facts();
    let picture = picture(&whole(&facts), &Scene::new(&facts));
    let origins: BTreeSet<&str> = picture.marks.origins().collect();
    for element in facts.plan.elements().iter() {
        let name = element.name();
        let room = format!("room {name}");
        assert!(origins.contains(name.as_str()) || origins.contains(room.as_str()), "{name}");
    }
}

#[test]
fn toggles_take_their_marks_away() {
    let facts = facts();
    let view = whole(&facts);
    let mut scene = Scene::new(&facts);
    let all = picture(&view, &scene);
    scene.show = Show {
        overheads: false,
        services: false,
        keep_clears: false,
        dimensions: false,
        furnishings: false,
        grid: false,
        notes: false,
        findings: false,
        rulers: false,
    };
    let few = picture(&view, &scene);
    let letters = |p: &Picture| {
        p.marks
            .origins()
            .map(|o| o.split(|c: char| c.is_ascii_digit()).next().unwrap_or("").to_owned())
            .collect::<BTreeSet<_>>()
    };
    let (all, few) = (letters(&all), letters(&few));
    for gone in ["H", "S", "B", "X", "grid", "dimension F"] {
        assert!(all.contains(gone) && !few.contains(gone), "{gone}");
    }
    for stays in ["F", "W", "U", "D", "N", "C", "T", "room R"] {
        assert!(all.contains(stays) && few.contains(stays), "{stays}");
    }
}

#[test]
fn a_breach_is_dense_and_red_and_its_badge_is_in_the_overlap() {
    let facts = facts();
    let view = whole(&facts);
    let square = |x: i32, y: i32, side: i32| {
        vec![
            Pt::inches(x, y),
            Pt::inches(x + side, y),
            Pt::inches(x + side, y + side),
            Pt::inches(x, y + side),
        ]
    };
    let service = facts.plan.elements().iter().find(|e| e.name().starts_with('S')).unwrap().id;
    let boxes = |breached| {
        [KeepClear {
            service,
            rule: "panel-depth",
            word: "working space",
            ring: square(250, 250, 40),
            bottom: Len::ZERO,
            top: Len::inches(78),
            breached,
        }]
    };
    let findings = [finding(
        Severity::Correction,
        vec![Place::Breach {
            keep_clear: square(250, 250, 40),
            overlap: vec![square(252, 252, 10)],
        }],
    )];
    let mut scene = Scene::new(&facts);
    let clear = boxes(false);
    scene.keep_clears = &clear;
    let calm = picture(&view, &scene);
    let red = boxes(true);
    scene.keep_clears = &red;
    let findings = findings.map(Arc::new);
    scene.findings = &findings;
    let alarm = picture(&view, &scene);
    let name = facts.plan.get(service).unwrap().name();
    let lines = |p: &Picture| {
        let marks = p.marks.under(&format!("keep-clear panel-depth {name}"));
        marks.0.iter().find_map(|m| match m {
            Mark::Segments { pairs, stroke } => Some((pairs.len(), stroke.tone)),
            _ => None,
        })
    };
    let (few, calm_tone) = lines(&calm).unwrap();
    let (many, alarm_tone) = lines(&alarm).unwrap();
    assert!(many > 2 * few);
    assert_eq!((calm_tone, alarm_tone), (drawing::Tone::KeepClear, drawing::Tone::Stop));
    // The octagon stands on the middle of the overlap.
    let at = view.screen_from_plan(Pt::inches(257, 257));
    let marks = alarm.marks.under(&format!(
        "finding panel-depth {}",
        facts.plan.get(plan::ElementId(3)).unwrap().name()
    ));
    let octagon = marks.0.iter().any(|m| {
        matches!(m, Mark::Fill { rings, .. }
        if rings[0].len() == 8 && rings[0].iter().all(|p| p.distance(at) < 10.0))
    });
    assert!(octagon, "{}", dump(&marks));
}

#[test]
fn badges_of_one_place_stand_side_by_side_and_set_aside_ones_are_hidden() {
    let facts = facts();
    let view = whole(&facts);
    let place = || vec![Place::Point(Pt::inches(120, 60))];
    let mut findings = vec![
        finding(Severity::Verify, place()),
        finding(Severity::Verify, place()),
        finding(Severity::Verify, place()),
    ];
    let marks = |findings: &[Finding]| {
        let mut scene = Scene::new(&facts);
        let findings: Vec<_> = findings.iter().cloned().map(Arc::new).collect();
        scene.findings = &findings;
        picture(&view, &scene)
            .marks
            .texts()
            .filter(|t| t.text == "?")
            .map(|t| t.at)
            .collect::<Vec<_>>()
    };
    let at = marks(&findings);
    assert_eq!(at.len(), 3);
    assert!(
        at[0].distance(at[1]) > 17.0
            && at[1].distance(at[2]) > 17.0
            && at[0].distance(at[2]) > 17.0
    );
    findings[1].set_aside = Some("agreed with the department".to_owned());
    assert_eq!(marks(&findings).len(), 2);
}

#[test]
fn the_figure_of_a_blade_says_its_value_and_tells_its_box() {
    let facts = facts();
    let view = whole(&facts);
    let long = Blade {
        from: Pt::inches(20, 60),
        to: Pt::inches(140, 60),
        value: Len::feet_inches(10, 0),
        editable: true,
        typed: None,
    };
    let short = Blade { to: Pt::inches(24, 60), value: Len::inches(4), ..long };
    let typed = Blade { typed: Some("9' 6"), ..long };
    for (blade, figure) in [(long, "10' 0\""), (short, "4\""), (typed, "9' 6")] {
        let blades = [blade];
        let scene = Scene { blades: &blades, ..Scene::new(&facts) };
        let picture = picture(&view, &scene);
        let marks = picture.marks.under("blade 0");
        let text = marks.texts().next().unwrap();
        assert_eq!(text.text, figure);
        let [found] = picture.figures[..] else { panic!("one figure") };
        assert_eq!(found.blade, 0);
        for corner in text.corners() {
            assert!(corner.x >= found.min.x && corner.x <= found.max.x, "{figure}");
            assert!(corner.y >= found.min.y && corner.y <= found.max.y, "{figure}");
        }
        assert_eq!(text.angle, 0.0);
    }
}

#[test]
fn ticks_get_finer_and_red_marks_stand_every_16_inches() {
    let facts = facts();
    let blades = [Blade {
        from: Pt::inches(0, 60),
        to: Pt::inches(80, 60),
        value: Len::inches(80),
        editable: false,
        typed: None,
    }];
    let count = |ppi: f64| {
        let mut view = View::fit(Bounds::of([Pt::inches(40, 60)]), SIZE, 0.0);
        view.scale = ppi / f64::from(Len::PER_INCH);
        let mut scene = Scene::new(&facts);
        scene.blades = &blades;
        let marks = picture(&view, &scene).marks.under("blade 0");
        let ticks = marks.0.iter().find_map(|m| match m {
            Mark::Segments { pairs, .. } => Some(pairs.len()),
            _ => None,
        });
        let red = marks
            .0
            .iter()
            .filter(|m| matches!(m, Mark::Fill { tone: drawing::Tone::TapeMark, .. }));
        (ticks, red.count())
    };
    assert_eq!(count(2.0), (Some(20), 5));
    assert_eq!(count(4.0), (Some(80), 5));
    assert_eq!(count(14.0), (Some(320), 5));
}

#[test]
fn words_keep_apart_at_many_zooms() {
    let facts = facts();
    let poche = Poche::of(&facts);
    let at = Pt::inches(170, 160);
    let blades = [
        Blade {
            from: Pt::inches(20, 250),
            to: Pt::inches(160, 250),
            value: Len::inches(140),
            editable: true,
            typed: None,
        },
        Blade {
            from: Pt::inches(90, 200),
            to: Pt::inches(90, 290),
            value: Len::inches(90),
            editable: true,
            typed: None,
        },
    ];
    let findings: Vec<Arc<Finding>> = (0..6)
        .map(|i| {
            Arc::new(finding(
                Severity::Advice,
                vec![Place::Span(Pt::inches(30 * i, 200), Pt::inches(30 * i + 30, 220))],
            ))
        })
        .collect();
    let mut scene = Scene::new(&facts);
    scene.poche = Some(&poche);
    scene.blades = &blades;
    scene.findings = &findings;
    scene.lit = &[0, 3];
    scene.caught = Some(Caught { word: "face", at, guide: None });
    for system in [System::Imperial, System::Metric] {
        scene.system = system;
        for zoom in [0.3, 0.7, 1.0, 1.6, 3.0, 9.0] {
            let view = whole(&facts);
            let view = view.zoomed(view.screen_from_plan(at), zoom);
            words_keep_apart(&picture(&view, &scene));
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn words_keep_apart_wherever_one_looks(x in 0f32..1180.0, y in 0f32..860.0, zoom in 0.4f64..8.0) {
        let facts = space::derive(&sample::bays(60));
        let view = whole(&facts).zoomed(P::new(x, y), zoom);
        words_keep_apart(&picture(&view, &Scene::new(&facts)));
    }
}

#[test]
fn the_same_scene_gives_the_same_picture_with_and_without_the_kept_poche() {
    let facts = facts();
    let poche = Poche::of(&facts);
    let view = whole(&facts);
    let mut scene = Scene::new(&facts);
    let first = dump(&picture(&view, &scene).marks);
    scene.poche = Some(&poche);
    assert_eq!(first, dump(&picture(&view, &scene).marks));
}

#[test]
fn the_svg_of_the_picture_is_well_formed_in_every_palette() {
    let facts = facts();
    let mut scene = Scene::new(&facts);
    for palette in Palette::ALL {
        scene.hatched = palette.hatches();
        let picture = picture(&whole(&facts), &scene);
        for marks in [&picture.marks, &picture.rulers] {
            let text = svg::write(marks, SIZE, palette);
            let doc = roxmltree::Document::parse(&text).unwrap();
            assert!(doc.descendants().any(|n| n.has_tag_name("text")));
        }
    }
}

#[test]
fn an_empty_plan_has_a_picture() {
    let facts = space::derive(&std::sync::Arc::new(plan::Plan::default()));
    let view = View::fit(Bounds::EMPTY, SIZE, 40.0);
    let picture = picture(&view, &Scene::new(&facts));
    assert_eq!(picture.marks.origins().collect::<Vec<_>>(), ["ground", "grid"]);
    assert_eq!(picture.marks.texts().count(), 0);
    assert!(picture.rulers.texts().count() > 10);
}

#[test]
fn what_is_off_the_screen_is_not_drawn() {
    let facts = facts();
    let view = whole(&facts).panned(5_000.0, 0.0);
    let picture = picture(&view, &Scene::new(&facts));
    assert_eq!(picture.marks.origins().collect::<Vec<_>>(), ["ground", "grid"]);
}

#[test]
fn new_work_is_hatched_in_print_and_tinted_else() {
    let facts = facts();
    let wall = facts.plan.elements().iter().find(|e| e.name().starts_with('W')).unwrap().name();
    let hatches = |hatched| {
        let mut scene = Scene::new(&facts);
        scene.hatched = hatched;
        let marks = picture(&whole(&facts), &scene).marks.under(&wall);
        marks.0.iter().any(|m| matches!(m, Mark::Segments { pairs, .. } if pairs.len() > 5))
    };
    assert!(hatches(true) && !hatches(false));
}

/// A small plan as text: what every mark of a partition with a door is, and where.
#[test]
fn a_partition_with_a_door_as_text() {
    let mut s = sample::Sample::default();
    let wall = s.partition((0, 0), (100, 0));
    s.door(wall, 20, plan::element::DoorOperation::Hinged);
    let facts = space::derive(&s.done());
    let mut view = View::fit(Bounds::EMPTY, (300.0, 200.0), 0.0);
    view.scale = 1.0 / f64::from(Len::PER_INCH);
    view.origin = (-50.0 * 8128.0, 100.0 * 8128.0);
    let picture = picture(&view, &Scene::new(&facts));
    assert_eq!(
        dump(&picture.marks.under("W1")),
        "fill NewFill 1.00 50.0,102.3 70.0,102.3 70.0,97.8 50.0,97.8\n\
         outline NewFill 0.8 50.0,102.3 70.0,102.3 70.0,97.8 50.0,97.8\n\
         fill NewFill 1.00 100.0,102.3 150.0,102.3 150.0,97.8 100.0,97.8\n\
         outline NewFill 0.8 100.0,102.3 150.0,102.3 150.0,97.8 100.0,97.8\n"
    );
    assert_eq!(
        dump(&picture.marks.under("new outline")),
        "outline New 1.4 50.0,102.3 70.0,102.3 70.0,97.8 50.0,97.8\n\
         outline New 1.4 100.0,102.3 150.0,102.3 150.0,97.8 100.0,97.8\n"
    );
    let door = dump(&picture.marks.under("D2"));
    let lines: Vec<&str> = door.lines().collect();
    assert_eq!(lines[0], "segments New 1.4 70.0,102.3 70.0,97.8; 100.0,102.3 100.0,97.8;");
    assert!(lines[1].starts_with("line New 0.8 70.0,67.8") && lines[1].ends_with("100.0,97.8"));
    assert_eq!(lines[2], "fill Slab 1.00 70.0,97.8 70.0,67.8 71.4,67.8 71.4,97.8");
}
