//! Openings for combustion air that are too small.

use plan::Element;
use plan::detail::heat::{
    AIR_FAN, AIR_FROM, AIR_INTAKE, AIR_LOUVRE, AIR_OPENING, AIR_PLACED, AIR_SIDE,
};
use plan::element::ServiceKind;

use super::burners::{Burners, burners};
use crate::answer::Answer;
use crate::rules::rooms::words::{capital, room_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "combustion-openings",
    group: Group::Heat,
    title: "Openings for combustion air",
    page: "\
What
Each of two openings to another room has 1 sq in of free area for each 1,000 BTU/h of all appliances, and at least 100 sq in;
openings to another level together 2 sq in for each 1,000. Each of two openings straight outdoors, or by upright ducts, has
1 sq in for each 4,000 BTU/h; by level ducts 1 sq in for each 2,000. One opening outdoors, high up, has 1 sq in for each
3,000 and no less than the vent connectors together. Two openings begin within 12 in of the top and of the bottom, none is
narrower than 3 in, an intake outdoors is 12 in above the ground. Where the room holds a part of the volume that the
standard method asks for, openings outdoors are smaller by that part. A fan brings 0.35 cfm for each 1,000 BTU/h.

Why
A closed door must not choke the burner.

Source
IRC G2407.5.3, G2407.6, G2407.9 to G2407.11 (IFGC 304.5 to 304.11): 2018 to 2024.

How it is measured
From what is stated at the tag of the room: where the air comes from, the area of each opening across its face, and what is
before it. A louvre of wood lets a quarter of its face pass, one of metal three quarters. Inputs as stated; what is asked for
is rounded up, what there is rounded down.

Cannot see
Screens, the vent connectors, whether the next room is large enough itself, and the interlock of a fan.

Exceptions
Rooms that hold air enough: see the rule on room volume. A maker's free area of a louvre: enter it with nothing before the
opening.

Remedies
Larger or further louvres; ducts from outdoors; a direct-vent appliance. Licensed work.
",
    cites: &[
        "combustion-indoor",
        "combustion-indoor-least",
        "combustion-level",
        "combustion-outdoor-two",
        "combustion-outdoor-level",
        "combustion-outdoor-one",
        "combustion-fan",
        "combustion-metal",
        "combustion-wood",
        "combustion-side",
        "combustion-placed",
        "combustion-intake",
    ],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater), On::Floors], check),
    remedies: None,
};

const WHY: &str = "A closed door must not choke the burner.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for group in burners(sheet) {
        let Some(tag) = group.tag(sheet).and_then(|id| sheet.plan().get(id)) else { continue };
        let from = sheet.ask(tag, &AIR_FROM);
        if from.is(&["the room"]) {
            continue;
        }
        let near = Near { sheet, group: &group, tag };
        out.extend(if from.is(&["a fan"]) { near.fan() } else { near.openings(&from) });
        near.made(&from, out);
    }
}

/// A group of appliances and the tag at which their air is stated.
struct Near<'s, 'a> {
    sheet: &'s Sheet<'a>,
    group: &'s Burners<'a>,
    tag: &'s Element,
}

impl Near<'_, '_> {
    fn count(&self, slug: &str) -> u64 {
        match self.sheet.book.entry(slug).map(|(_, clause)| clause.figure) {
            Some(crate::Figure::Count(n)) => u64::from(n),
            _ => 0,
        }
    }

    /// The limit that a way of getting air follows, how many BTU/h one square inch serves, and the least area.
    fn demand(&self, from: &Answer) -> Option<(&'static str, u64, u64)> {
        let (slug, least) = match from.word()? {
            "two openings to next room" => {
                ("combustion-indoor", self.count("combustion-indoor-least"))
            }
            "openings to another level" => ("combustion-level", 0),
            "two openings outdoors" => ("combustion-outdoor-two", 0),
            "two level ducts outdoors" => ("combustion-outdoor-level", 0),
            "one opening outdoors" => ("combustion-outdoor-one", 0),
            _ => return None,
        };
        Some((slug, self.count(slug).max(1), least))
    }

    fn openings(&self, from: &Answer) -> Option<Finding> {
        let (slug, per, least) = self.demand(from)?;
        let face = self.sheet.ask(self.tag, &AIR_OPENING);
        let louvre = self.sheet.ask(self.tag, &AIR_LOUVRE);
        let percent = match louvre.word() {
            Some("metal louvre") => self.count("combustion-metal"),
            Some("wood louvre") => self.count("combustion-wood"),
            _ => 100,
        };
        let free = face.number().map(|n| u64::from(n) * percent / 100);
        let required = self.group.input().map(|input| self.area(input, per, slug).max(least));
        if let (Some(free), Some(required)) = (free, required)
            && free >= required
        {
            return None;
        }
        let measured = match free {
            Some(n) => format!("{n} sq in free"),
            None => "not stated".to_owned(),
        };
        let asked = match required {
            Some(n) => format!("{n} sq in free"),
            None => format!("1 sq in for each {per} BTU/h"),
        };
        Some(self.finding(slug, measured, asked).resting_on(&face).resting_on(&louvre))
            .map(|finding| self.resting_on_inputs(finding))
    }

    /// The free area asked for, rounded up. From outdoors only the part of the air is asked for that the room itself
    /// does not hold: one less its volume over the volume of the standard method.
    fn area(&self, input: u64, per: u64, slug: &str) -> u64 {
        if !slug.starts_with("combustion-outdoor") {
            return input.div_ceil(per);
        }
        let volume = (self.group.cubic_inches(self.sheet) / 1728).min(u128::from(u64::MAX)) as u64;
        let asked = (input * self.count("combustion-volume")).div_ceil(1_000).max(1);
        (input * asked.saturating_sub(volume)).div_ceil(per * asked)
    }

    fn fan(&self) -> Option<Finding> {
        let rate = self.sheet.ask(self.tag, &AIR_FAN);
        let hundredths = self.count("combustion-fan");
        let required = self.group.input().map(|input| (input * hundredths).div_ceil(100_000));
        if let (Some(rate), Some(required)) = (rate.number(), required)
            && u64::from(rate) >= required
        {
            return None;
        }
        let measured = rate.number().map_or("not stated".to_owned(), |n| format!("{n} cfm"));
        let asked = match required {
            Some(n) => format!("{n} cfm"),
            None => format!("0.{hundredths} cfm for each 1,000 BTU/h"),
        };
        let finding = self.finding("combustion-fan", measured, asked).resting_on(&rate);
        Some(self.resting_on_inputs(finding))
    }

    /// How the openings are made: their least side, where they begin, how high an intake is.
    fn made(&self, from: &Answer, out: &mut Vec<Finding>) {
        let ask = |detail| self.sheet.ask(self.tag, detail);
        let outdoors = from.word().is_some_and(|word| word.contains("outdoors"));
        for (answer, slug, asked) in [
            (ask(&AIR_SIDE), "combustion-side", true),
            (ask(&AIR_INTAKE), "combustion-intake", outdoors),
        ] {
            let limit = self.sheet.book.length(slug);
            if asked && let Some(len) = answer.len().filter(|len| *len < limit) {
                let mut finding = self.finding(slug, String::new(), String::new());
                finding.measured = Some(Quantity::Len(len));
                finding.required = Some(Quantity::Len(limit));
                out.push(finding.resting_on(&answer));
            }
        }
        let placed = ask(&AIR_PLACED);
        if placed.yes() == Some(false) {
            let (no, yes) = ("no".to_owned(), "within 12 in of top and bottom".to_owned());
            out.push(self.finding("combustion-placed", no, yes).resting_on(&placed));
        }
    }

    fn finding(&self, slug: &'static str, measured: String, asked: String) -> Finding {
        let room = self.group.rooms.first();
        let name = room.map_or_else(String::new, |room| capital(&room_called(room)));
        let title = match measured.as_str() {
            "not stated" => format!("{name}: the openings for combustion air can't be judged yet"),
            _ => format!("{name}: the openings for combustion air don't serve"),
        };
        let mut about = self.group.ids();
        about.push(self.tag.id);
        let citation = self.sheet.book.cite(slug);
        let severity = Severity::Correction;
        let finding = Finding::new(severity, citation, RULE.slug, about, Phrase::text(title), WHY)
            .figures(Quantity::Words(measured), Quantity::Words(asked));
        match room {
            Some(room) => finding.at(Place::Label(room.index)),
            None => finding,
        }
    }

    fn resting_on_inputs(&self, finding: Finding) -> Finding {
        let open = self.group.appliances.iter().find(|b| b.input.value.is_none());
        open.map_or(finding.clone(), |burner| finding.resting_on(&burner.input))
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::heat::{FUEL, INPUT, VENT};
    use plan::element::{RoomUse, ServiceKind};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "combustion-openings";

    /// A utility room with a furnace of this input, air from these openings of this area with nothing before them.
    fn with_input(input: u32, from: &'static str, area: u32) -> Sample {
        Sample::room(120.0, 120.0)
            .service(ServiceKind::Furnace, at(60.0, 0.0), Facing::NORTH)
            .state(&FUEL, Value::Word("natural gas"))
            .state(&VENT, Value::Word("draft hood"))
            .state(&INPUT, Value::Number(input))
            .tag(at(60.0, 100.0), "Utility", RoomUse::Mechanical)
            .state(&AIR_FROM, Value::Word(from))
            .state(&AIR_OPENING, Value::Number(area))
            .state(&AIR_LOUVRE, Value::Word("nothing"))
    }

    fn utility(from: &'static str, area: u32) -> Sample {
        with_input(150_000, from, area)
    }

    #[test]
    fn clear_pass() {
        utility("two openings to next room", 200).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            utility("two openings to next room", 60)
                .edition(edition)
                .expect(SLUG, &["correction, measured 60 sq in free, required 150 sq in free"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 150,000 BTU/h: 1 sq in for each 1,000, 500, 4,000, 2,000 and 3,000. The room holds 800 of the 7,500 cu ft,
        // so that openings outdoors are smaller by 800 / 7,500.
        for (from, least) in [
            ("two openings to next room", 150),
            ("openings to another level", 300),
            ("two openings outdoors", 34),
            ("two level ducts outdoors", 67),
            ("one opening outdoors", 45),
        ] {
            utility(from, least).expect_none(SLUG);
            assert_eq!(utility(from, least - 1).findings(SLUG).len(), 1, "{from}");
        }
    }

    #[test]
    fn an_indoor_opening_has_at_least_100_square_inches() {
        let small = |area| with_input(40_000, "two openings to next room", area);
        small(100).expect_none(SLUG);
        small(99).expect(SLUG, &["correction, measured 99 sq in free, required 100 sq in free"]);
    }

    #[test]
    fn a_louvre_lets_a_part_of_its_face_pass() {
        // Metal three quarters: 200 of 200 sq in give 150. Wood a quarter: 600 give 150.
        let louvre = |area, kind| {
            utility("two openings to next room", area).state(&AIR_LOUVRE, Value::Word(kind))
        };
        louvre(200, "metal louvre").expect_none(SLUG);
        louvre(199, "metal louvre")
            .expect(SLUG, &["correction, measured 149 sq in free, required 150 sq in free"]);
        louvre(600, "wood louvre").expect_none(SLUG);
        // T3: a door of 24 by 78 in, louvred in wood all over, gives 468 sq in: 234 for each of two halves.
        assert_eq!(24 * 78 * 25 / 100, 468);
        assert_eq!(louvre(599, "wood louvre").findings(SLUG).len(), 1);
    }

    #[test]
    fn a_fan_is_held_to_its_rate() {
        // 0.35 cfm for each 1,000 BTU/h: 52.5 for 150,000.
        let fan = |rate| utility("a fan", 0).state(&AIR_FAN, Value::Number(rate));
        fan(53).expect_none(SLUG);
        fan(52).expect(SLUG, &["correction, measured 52 cfm, required 53 cfm"]);
    }

    #[test]
    fn openings_are_wide_enough_high_and_low_and_above_the_snow() {
        let good = || utility("two openings outdoors", 40);
        let side = |len| good().state(&AIR_SIDE, Value::Length(len));
        side(inch(3.0)).expect_none(SLUG);
        side(inch(3.0) - measure::Len::UNIT)
            .expect(SLUG, &["correction, measured 2 15/16\", required 3\""]);
        let intake = |len| good().state(&AIR_INTAKE, Value::Length(len));
        intake(inch(12.0)).expect_none(SLUG);
        assert_eq!(intake(inch(11.0)).findings(SLUG).len(), 1);
        assert_eq!(good().state(&AIR_PLACED, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        let bare = utility("two openings outdoors", 40).tune(|e| e.details.set(&AIR_OPENING, None));
        bare.expect(SLUG, &["verify, measured not stated, required 34 sq in free"]);
    }

    #[test]
    fn does_not_apply() {
        utility("the room", 0).expect_none(SLUG);
        Sample::with_room(RoomUse::Mechanical)
            .state(&AIR_FROM, Value::Word("one opening outdoors"))
            .expect_none(SLUG);
    }
}
