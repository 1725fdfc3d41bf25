//! Check values of services from outside, one test for each, named by its number and source.
//!
//! CA1 to CA6 and AX1 to AX15 are those of the project's facts on services, T3 and T7, where the sources stand.
//! What a source prints is in `published`; what was worked out from a published rule is in `derived`.

mod basement;

use basement::{Basement, inch};
use geometry::Facing;
use plan::detail::Value;
use plan::detail::heat::{
    AIR_FROM, AIR_LOUVRE, AIR_OPENING, DRYER_ELBOWS, DRYER_LENGTH, DRYER_RIGHT_ANGLES, FUEL, INPUT,
    VENT,
};
use plan::element::{
    AccessOpening, DoorOperation, OverheadKind, OverheadShape, RoomUse, ServiceKind,
};
use plan::{Body, CeilingBuild, House};
use rules::Severity;

/// A basement of this size in feet, 8 ft high, with appliances of these inputs and vents.
fn with_appliances(width: f64, depth: f64, appliances: &[(u32, &'static str)]) -> Basement {
    let room = Basement::of(width * 12.0, depth * 12.0, RoomUse::Mechanical);
    appliances.iter().enumerate().fold(room, |room, (i, (input, vent))| {
        room.service(ServiceKind::WaterHeater, 20.0 + 25.0 * i as f64, 0.0, Facing::NORTH)
            .state(&FUEL, Value::Word("natural gas"))
            .state(&VENT, Value::Word(vent))
            .state(&INPUT, Value::Number(*input))
    })
}

/// What is said of combustion air: measured and required.
fn air(basement: &Basement, slug: &str) -> Vec<(String, String)> {
    let system = measure::System::Imperial;
    let text = |f: &rules::Finding| {
        (f.measured_text(system).unwrap_or_default(), f.required_text(system).unwrap_or_default())
    };
    basement.findings(slug).iter().map(text).collect()
}

/// The tag of the room says where the air comes from and how large each opening is.
fn from(basement: Basement, from: &'static str, area: u32) -> Basement {
    // A tag of its own would be the second one: the first stands in the middle of the room.
    basement.retag(|e| {
        e.details.set(&AIR_FROM, Some(Value::Word(from)));
        e.details.set(&AIR_OPENING, Some(Value::Number(area)));
        e.details.set(&AIR_LOUVRE, Some(Value::Word("nothing")));
    })
}

mod published {
    use super::*;

    /// 15 x 30 x 8 ft with 100,000 and 40,000 BTU/h: 3,600 of 7,000 cu ft, one opening outdoors of 23 sq in.
    #[test]
    fn ca1_cpc13_appendix_j() {
        let room =
            with_appliances(15.0, 30.0, &[(100_000, "fan-assisted"), (40_000, "draft hood")]);
        let expected = [("3600 cu ft".to_owned(), "7000 cu ft".to_owned())];
        assert_eq!(air(&room, "combustion-volume"), expected);
        let opening = |area| from(room.clone(), "one opening outdoors", area);
        assert!(opening(23).findings("combustion-openings").is_empty());
        let small = [("22 sq in free".to_owned(), "23 sq in free".to_owned())];
        assert_eq!(air(&opening(22), "combustion-openings"), small);
    }

    /// 20 x 16 x 8 ft serve 51,200 BTU/h.
    #[test]
    fn ca2_manuals_20_by_16_by_8() {
        let room = |input| with_appliances(20.0, 16.0, &[(input, "draft hood")]);
        assert!(room(51_200).findings("combustion-volume").is_empty());
        assert_eq!(room(51_201).findings("combustion-volume").len(), 1);
    }

    /// 120,000 BTU/h ask for 6,000 cu ft.
    #[test]
    fn ca3_web_calculator_120_000() {
        let room = with_appliances(10.0, 10.0, &[(120_000, "draft hood")]);
        let expected = [("800 cu ft".to_owned(), "6000 cu ft".to_owned())];
        assert_eq!(air(&room, "combustion-volume"), expected);
    }
}

mod derived {
    use super::*;

    const BOTH: [(u32, &str); 2] = [(100_000, "fan-assisted"), (40_000, "draft hood")];

    /// 140,000 BTU/h by two openings to another room: 140 sq in each.
    #[test]
    fn ca4_two_indoor_openings() {
        let room =
            |area| from(with_appliances(15.0, 30.0, &BOTH), "two openings to next room", area);
        assert!(room(140).findings("combustion-openings").is_empty());
        assert_eq!(room(139).findings("combustion-openings").len(), 1);
    }

    /// The same by ducts from outdoors: 35 and 70 sq in, here of a closet that holds next to nothing itself.
    #[test]
    fn ca5_two_outdoor_ducts() {
        let closet = |word, area| from(with_appliances(6.0, 5.0, &BOTH), word, area);
        // 240 of 7,000 cu ft take a thirtieth off 35 and 70: 33.8 and 67.6 sq in are asked for, in whole ones.
        for (word, full, least) in
            [("two openings outdoors", 35, 34), ("two level ducts outdoors", 70, 68)]
        {
            for enough in [full, least] {
                assert!(closet(word, enough).findings("combustion-openings").is_empty(), "{word}");
            }
            let less = closet(word, least - 1).findings("combustion-openings");
            assert_eq!(less.len(), 1, "{word}");
        }
    }

    /// With the furnace direct-vent the heater alone counts: 2,000 cu ft, 100 sq in as the least.
    #[test]
    fn ca6_direct_vent_drops_out() {
        let alone = [(100_000, "direct vent"), (40_000, "draft hood")];
        let room = with_appliances(10.0, 10.0, &alone);
        let expected = [("800 cu ft".to_owned(), "2000 cu ft".to_owned())];
        assert_eq!(air(&room, "combustion-volume"), expected);
        let opening = |area| from(room.clone(), "two openings to next room", area);
        assert!(opening(100).findings("combustion-openings").is_empty());
        assert_eq!(opening(99).findings("combustion-openings").len(), 1);
        // A condensing furnace with one pipe is not direct vent: it counts.
        let one_pipe = [(100_000, "one pipe"), (40_000, "draft hood")];
        let counted = with_appliances(10.0, 10.0, &one_pipe);
        assert_eq!(air(&counted, "combustion-volume")[0].1, "7000 cu ft");
    }

    fn unfinished(width: f64, depth: f64) -> Basement {
        Basement::of(width, depth, RoomUse::Unfinished)
    }

    /// A panel 14 in wide and 4 in deep on the south wall.
    fn panel(depth: f64) -> Basement {
        unfinished(120.0, depth).service(ServiceKind::Panel, 60.0, 0.0, Facing::NORTH)
    }

    fn severity(basement: &Basement, slug: &str) -> Option<Severity> {
        basement.findings(slug).iter().map(|f| f.severity).min()
    }

    /// The width of the working space may lie to one side: a wall 2 in from the panel is no fault of width.
    #[test]
    fn ax1_panel_in_a_corner() {
        let corner = unfinished(120.0, 120.0).service(ServiceKind::Panel, 9.0, 0.0, Facing::NORTH);
        assert_eq!(severity(&corner, "panel-width"), None);
        // The side of its hinge is not drawn: one hinged away from the wall opens.
        assert_ne!(severity(&corner, "panel-door-swing"), Some(Severity::Correction));
    }

    /// 36 in clear to a masonry wall are enough.
    #[test]
    fn ax2_36_in_to_masonry() {
        assert_eq!(severity(&panel(40.0), "panel-depth"), None);
        assert_eq!(severity(&panel(39.0), "panel-depth"), Some(Severity::Correction));
    }

    /// A soffit at 76 in over the working space: let be in a house that stands, a correction in a new one.
    #[test]
    fn ax3_ax4_soffit_at_76_in() {
        let low = |house| panel(100.0).house(house).add(soffit(20.0, 30.0, 76.0));
        assert_ne!(severity(&low(House::Existing), "panel-height"), Some(Severity::Correction));
        assert_eq!(severity(&low(House::New), "panel-height"), Some(Severity::Correction));
    }

    /// A duct across the room, its south edge at `from` and its north edge at `to`.
    fn soffit(from: f64, to: f64, underside: f64) -> Body {
        duct(OverheadKind::Soffit, from, to, underside)
    }

    fn duct(kind: OverheadKind, from: f64, to: f64, underside: f64) -> Body {
        let y = inch((from + to) / 2.0);
        let at = |x: f64| geometry::Pt::at(inch(x), y);
        let shape = OverheadShape::Run { a: at(0.0), b: at(120.0), width: inch(to - from) };
        Body::Overhead(plan::element::Overhead { kind, shape, underside: inch(underside) })
    }

    /// A duct 14 in above the top of the panel, over its footprint: not in its dedicated space, tiles or no tiles.
    #[test]
    fn ax5_duct_above_the_panel() {
        let tiles = panel(100.0).site(|s| s.ceiling = CeilingBuild::LayIn(inch(4.0))).add(duct(
            OverheadKind::Duct,
            0.0,
            4.0,
            86.0,
        ));
        assert!(severity(&tiles, "panel-dedicated-space").is_some());
    }

    /// A duct that crosses 20 in before the panel at 82 in is in neither of its spaces.
    #[test]
    fn ax6_duct_before_the_panel() {
        let before = panel(100.0).add(duct(OverheadKind::Duct, 24.0, 36.0, 82.0));
        assert_eq!(severity(&before, "panel-dedicated-space"), None);
        assert_eq!(severity(&before, "panel-height"), None);
    }

    /// A water heater of 26 in behind a passage of 24 in.
    #[test]
    fn ax8_the_largest_appliance_must_pass() {
        let behind = |leaf| {
            unfinished(300.0, 120.0)
                .partition((150.0, 0.0), (150.0, 120.0))
                .opening(DoorOperation::Cased, 40.0, leaf)
                .service(ServiceKind::WaterHeater, 250.0, 0.0, Facing::NORTH)
                .tune(|e| match &mut e.body {
                    Body::Service(s) => (s.width, s.depth) = (inch(26.0), inch(26.0)),
                    other => panic!("{}", other.word()),
                })
                .stair_at(40.0, 60.0)
        };
        assert!(severity(&behind(24.0), "appliance-passage").is_some());
        assert_eq!(severity(&behind(26.0), "appliance-passage"), None);
    }

    /// A gas valve 5 ft away, but in the next room once a partition stands between.
    #[test]
    fn ax9_gas_valve_in_the_next_room() {
        let room = unfinished(240.0, 120.0)
            .service(ServiceKind::Furnace, 150.0, 0.0, Facing::NORTH)
            .service(ServiceKind::GasValve, 80.0, 0.0, Facing::NORTH);
        assert_eq!(severity(&room, "gas-valve-distance"), None);
        let parted = room.partition((110.0, 0.0), (110.0, 120.0));
        assert!(severity(&parted, "gas-valve-distance").is_some());
    }

    /// A junction box above tiles is reached, above board it is buried.
    #[test]
    fn ax13_junction_box_above_the_ceiling() {
        let under = |ceiling| {
            Basement::room(RoomUse::Office)
                .site(|s| s.ceiling = ceiling)
                .service(ServiceKind::JunctionBox, 60.0, 60.0, Facing::NORTH)
                .tune(|e| match &mut e.body {
                    Body::Service(s) => s.bottom = inch(97.0),
                    other => panic!("{}", other.word()),
                })
        };
        assert_eq!(severity(&under(CeilingBuild::LayIn(inch(4.0))), "junction-box-access"), None);
        let board = under(CeilingBuild::Board(inch(0.5)));
        assert!(severity(&board, "junction-box-access").is_some());
        let hatch = board.tune(|e| match &mut e.body {
            Body::Service(s) => {
                s.access = Some(AccessOpening { width: inch(14.0), height: inch(14.0) });
            }
            other => panic!("{}", other.word()),
        });
        assert_eq!(severity(&hatch, "junction-box-access"), None);
    }

    /// Two separate unfinished rooms with one receptacle in all.
    #[test]
    fn ax14_one_receptacle_for_two_unfinished_rooms() {
        let two = unfinished(240.0, 120.0)
            .partition((120.0, 0.0), (120.0, 120.0))
            .tag(200.0, 90.0, RoomUse::Unfinished)
            .service(ServiceKind::Receptacle, 40.0, 0.0, Facing::NORTH);
        assert!(severity(&two, "receptacle-portion").is_some());
        let both = two.service(ServiceKind::Receptacle, 180.0, 0.0, Facing::NORTH);
        assert_eq!(severity(&both, "receptacle-portion"), None);
    }

    /// A hall of 9 ft 8 in needs no receptacle, one of 10 ft does.
    #[test]
    fn ax15_a_short_hall() {
        let hall = |length: f64| {
            Basement::of(length, 40.0, RoomUse::Hall)
                .partition((0.0, 36.0), (length, 36.0))
                .service(ServiceKind::Receptacle, 10.0, 40.0, Facing::NORTH)
        };
        assert_eq!(severity(&hall(116.0), "receptacle-hall"), None);
    }

    /// PL6: a dryer's duct of 25 ft with three elbows of 4 in is 40 ft long; with elbows of 6 in radius 30 ft 3 in.
    #[test]
    fn pl6_dryer_duct() {
        let duct = |feet: i32, elbows| {
            unfinished(120.0, 120.0)
                .service(ServiceKind::ClothesDryer, 60.0, 0.0, Facing::NORTH)
                .state(&DRYER_LENGTH, Value::Length(measure::Len::feet_inches(feet, 0)))
                .state(&DRYER_RIGHT_ANGLES, Value::Number(3))
                .state(&DRYER_ELBOWS, Value::Word(elbows))
        };
        assert!(severity(&duct(25, "mitred"), "dryer-length").is_some());
        assert_eq!(severity(&duct(20, "mitred"), "dryer-length"), None);
        assert_eq!(severity(&duct(25, "smooth, 6 in radius"), "dryer-length"), None);
        // 35 ft less 5 ft 3 in are 29 ft 9 in.
        assert_eq!(severity(&duct(29, "smooth, 6 in radius"), "dryer-length"), None);
        assert!(severity(&duct(30, "smooth, 6 in radius"), "dryer-length").is_some());
    }
}
