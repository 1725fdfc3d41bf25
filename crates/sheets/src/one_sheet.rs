//! Everything on one sheet: the pages of the set as boxes beside and below each other.

use drawing::{Marks, P, Stroke, Style, TextMark, Tone};

use crate::paper::Area;
use crate::scale::Scale;
use crate::set::{Drawn, Page};
use crate::type_set::{BODY, cut};

/// What is said where the paper has no room for everything.
pub const CROWDED: &str =
    "Not everything fits on one sheet of this paper: there are several. Choose a larger paper.";

/// Boxes across the sheet.
const ACROSS: std::ops::RangeInclusive<usize> = 3..=7;
/// The least size of a box, in points: smaller ones hold no table.
const LEAST: (f32, f32) = (330.0, 225.0);
/// The strip with number and title at the top of a box, and the air round what is drawn.
const HEAD: f32 = 15.0;
const AIR: f32 = 5.0;

/// Boxes of the plan and of the services, across and down.
type Plans = [(usize, usize); 2];
const PLANS: [Plans; 3] = [[(3, 2), (2, 2)], [(2, 2), (2, 2)], [(2, 2), (1, 1)]];

/// A way to divide the sheet.
#[derive(Clone, Copy)]
struct Grid {
    across: usize,
    down: usize,
    cell: (f32, f32),
    plans: Plans,
}

impl Grid {
    /// How many boxes a kind takes, across and down.
    fn boxes(&self, kind: &str) -> (usize, usize) {
        match kind {
            "proposed-plan" => self.plans[0],
            "services-plan" => self.plans[1],
            "cover" | "tables" => (2, 1),
            _ => (1, 1),
        }
    }

    fn size(&self, kind: &str) -> (f32, f32) {
        let (w, h) = self.boxes(kind);
        (self.cell.0 * w as f32, self.cell.1 * h as f32)
    }

    /// How large the plans become.
    fn worth(&self) -> f32 {
        let area = |kind| {
            let (w, h) = self.size(kind);
            w * h
        };
        area("proposed-plan") + 0.5 * area("services-plan")
    }

    /// What a kind may fill of its boxes, from the corner of the first.
    fn inner(&self, kind: &str) -> Area {
        let (w, h) = self.size(kind);
        Area { left: AIR, top: HEAD + AIR, right: w - AIR, bottom: h - AIR }
    }
}

/// Every way to divide the sheet, the one with the largest plans first.
fn grids(area: Area) -> Vec<Grid> {
    let mut all = Vec::new();
    for across in ACROSS {
        for down in [across - 1, across] {
            let cell = (area.width() / across as f32, area.height() / down as f32);
            if cell.0 >= LEAST.0 && cell.1 >= LEAST.1 {
                all.extend(PLANS.map(|plans| Grid { across, down, cell, plans }));
            }
        }
    }
    all.sort_by(|a, b| b.worth().total_cmp(&a.worth()));
    all
}

/// The box to fill for a kind of sheet, by its slug.
pub(crate) type Boxes<'a> = dyn Fn(&str) -> Area + 'a;

/// The page, and what was drawn for it; nothing where the paper has no room.
pub(crate) fn compose(area: Area, draw: &dyn Fn(&Boxes<'_>) -> Drawn) -> Option<(Page, Drawn)> {
    grids(area).into_iter().find_map(|grid| {
        let drawn = draw(&|kind: &str| grid.inner(kind));
        // A plan that is too small to be read is no plan.
        let small = |page: &Page| {
            let plan = ["proposed-plan", "services-plan"].contains(&page.kind);
            plan && page.scale.is_some_and(|word| !Scale::is_usual(word))
        };
        // Nor is one whose words have no room.
        let off = |page: &Page| {
            let room = grid.inner(page.kind);
            let out = |p: &P| {
                p.x < room.left - AIR
                    || p.x > room.right + AIR
                    || p.y < room.top - AIR
                    || p.y > room.bottom + AIR
            };
            page.marks.0.iter().any(|mark| mark.points().iter().any(out))
        };
        if drawn.pages.iter().any(|page| small(page) || off(page)) {
            return None;
        }
        let places = places(&drawn.pages, &grid)?;
        let page = page(&drawn, &places, area, &grid);
        Some((page, drawn))
    })
}

/// The column and row of each page, each in the first room there is; nothing where one has none.
fn places(pages: &[Page], grid: &Grid) -> Option<Vec<(usize, usize)>> {
    let (across, down) = (grid.across, grid.down);
    let mut taken = vec![vec![false; across]; down];
    let mut places = vec![(0, 0); pages.len()];
    // The largest first, else in their order.
    let mut order: Vec<usize> = (0..pages.len()).collect();
    order.sort_by_key(|i| {
        let (w, h) = grid.boxes(pages[*i].kind);
        std::cmp::Reverse(w * h)
    });
    for i in order {
        let (w, h) = grid.boxes(pages[i].kind);
        let fits = |x: usize, y: usize| {
            x + w <= across && y + h <= down && (y..y + h).all(|y| (x..x + w).all(|x| !taken[y][x]))
        };
        let all = (0..down).flat_map(|y| (0..across).map(move |x| (x, y)));
        let (x, y) = all.into_iter().find(|(x, y)| fits(*x, *y))?;
        for row in &mut taken[y..y + h] {
            row[x..x + w].fill(true);
        }
        places[i] = (x, y);
    }
    Some(places)
}

fn page(drawn: &Drawn, places: &[(usize, usize)], area: Area, grid: &Grid) -> Page {
    let cell = grid.cell;
    let mut marks = Marks::new();
    for (page, (x, y)) in drawn.pages.iter().zip(places) {
        let (w, h) = grid.size(page.kind);
        let left = area.left + cell.0 * *x as f32;
        let top = area.top + cell.1 * *y as f32;
        let whole = Area { left, top, right: left + w, bottom: top + h };
        marks.group(format!("drawing {}", page.number), |m| {
            m.append(page.marks.clone().placed(1.0, P::new(left, top)));
        });
        marks.group(format!("box {}", page.number), |m| head(page, whole, m));
    }
    Page {
        number: "A-100".to_owned(),
        kind: "one-sheet",
        title: "All drawings on one sheet".to_owned(),
        scale: Some("as noted"),
        marks,
    }
}

fn head(page: &Page, whole: Area, m: &mut Marks) {
    m.outline(whole.ring(), Stroke::solid(Tone::Ink, 0.6));
    let y = whole.top + HEAD;
    m.line(vec![P::new(whole.left, y), P::new(whole.right, y)], Stroke::solid(Tone::Ink, 0.4));
    let text = format!("{}  {}", page.number, page.title);
    let text = cut(&text, BODY, Style::Bold, whole.width() - 10.0);
    let mark =
        TextMark::new(P::new(whole.left + AIR, whole.top + HEAD / 2.0), text, BODY, Tone::Ink);
    m.text(TextMark { style: Style::Bold, ..mark.anchor(drawing::Anchor::Start) });
}
