//! The headroom of the rooms: floor that is lower than a named height, hatched, with its figure; the lowest spot marked.

use drawing::{Marks, Slope, Stroke, TextMark, Tone, hatch, size};
use measure::{Len, Precision};
use rules::NamedHeight;
use space::HeightRegion;

use crate::labels::{NOBODY, Placer};
use crate::picture::Canvas;

/// The headroom of one room.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RoomHeights {
    pub room: space::RoomIndex,
    /// Lowest first.
    pub regions: Vec<HeightRegion>,
    /// Lower first; empty where nothing is asked.
    pub named: Vec<NamedHeight>,
}

impl RoomHeights {
    /// How many of the named heights a clear height falls short of. One that is met just is met.
    pub fn short_of(&self, clear: Len) -> usize {
        self.named.iter().filter(|named| clear < named.height).count()
    }
}

pub(crate) fn draw(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    for room in canvas.scene.heights {
        let name = &canvas.scene.facts.room(room.room).name;
        marks.group(format!("headroom {name}"), |m| one(canvas, room, placer, m));
    }
}

fn one(canvas: &Canvas<'_>, room: &RoomHeights, placer: &mut Placer, m: &mut Marks) {
    let system = canvas.scene.system;
    for (i, region) in room.regions.iter().enumerate() {
        let (tone, slope, gap) = match room.short_of(region.clear) {
            _ if region.under.is_empty() && room.short_of(region.clear) == 0 => continue,
            0 => (Tone::Advice, Slope::Rising, 14.0),
            1 if room.named.len() > 1 => (Tone::Verify, Slope::Rising, 9.0),
            _ => (Tone::Stop, Slope::Falling, 6.0),
        };
        for shape in region.shapes.iter().filter(|shape| canvas.sees(&shape.outer)) {
            let rings: Vec<Vec<_>> = shape.rings().map(|ring| canvas.view.ring(ring)).collect();
            m.fill_rings(rings.clone(), tone, 0.10);
            let rings: Vec<&[_]> = rings.iter().map(Vec::as_slice).collect();
            m.segments(hatch(&rings, slope, gap, canvas.phase()), Stroke::solid(tone, 0.8));
        }
        let Some(middle) = region.middle() else { continue };
        let at = canvas.view.screen_from_plan(middle);
        if i == 0 {
            m.circle(at, 4.0, Some(Tone::Paper), Some(Stroke::solid(tone, 2.0)));
        }
        let figure = system.inches(region.clear, Precision::Floor);
        let text = |dx: f32, dy: f32| {
            TextMark::new(at.by(dx, dy), figure.clone(), size::BODY, tone).bold().plate(Tone::Paper)
        };
        let half = text(0.0, 0.0).width() / 2.0 + 10.0;
        let places = [(half, 0.0), (-half, 0.0), (0.0, 16.0), (0.0, -16.0), (half, 16.0)];
        let mut free = places.into_iter().map(|(dx, dy)| text(dx, dy));
        if let Some(text) = free.find(|t| placer.take(t.plate_corners(), NOBODY)) {
            m.text(text);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_height_that_is_met_just_is_met() {
        let citation = rules::Book::model(plan::Edition::E2021).cite("projection");
        let named = |inches, of| NamedHeight {
            height: Len::inches(inches),
            of,
            citation: citation.clone(),
        };
        let room = RoomHeights {
            room: space::RoomIndex(0),
            regions: Vec::new(),
            named: vec![named(76, "under beams and ducts"), named(84, "ceiling")],
        };
        let short = |len| room.short_of(len);
        assert_eq!(short(Len::inches(84)), 0);
        assert_eq!(short(Len::inches(84) - Len::UNIT), 1);
        assert_eq!(short(Len::inches(76)), 1);
        assert_eq!(short(Len::inches(76) - Len::UNIT), 2);
    }
}
