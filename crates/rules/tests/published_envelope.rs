//! Check values of the envelope from outside, one test for each, named by its number and source.
//!
//! The numbers are those of the project's facts on envelope, take-off and planning, section G, where the sources
//! stand. The others of that section are of calculators that this program has not.

mod basement;

use basement::{Basement, inch};
use plan::detail::site::{CLIMATE_ZONE, RADON, YEAR_BUILT};
use plan::detail::wall::{CAVITY_R, FOAM_R};
use plan::detail::{Detail, Value};
use plan::element::{Furring, Layer, Material, RoomUse};
use plan::{Body, Edition, ElementId};

/// A family room with one furred foundation wall in a zone.
fn furred(zone: &'static str, foam: u32, cavity: u32) -> Basement {
    let layers =
        vec![Layer::new(Material::Stud, inch(3.5)), Layer::new(Material::Board, inch(0.5))];
    let (from, to, spacing) = (inch(0.0), inch(144.0), inch(16.0));
    Basement::room(RoomUse::FamilyRoom)
        .site(|s| s.details.set(&CLIMATE_ZONE, Some(Value::Word(zone))))
        .add(Body::Furring(Furring { host: ElementId(1), from, to, layers, spacing }))
        .state(&FOAM_R, Value::Number(foam))
        .state(&CAVITY_R, Value::Number(cavity))
}

fn fails(basement: &Basement) -> bool {
    !basement.findings("insulation-value").is_empty()
}

/// Zone 5, 2018: R-10 in a sheet fails; R-15 in a sheet, R-19 in the cavity, and R-13 with R-5 pass. Zone 4, 2021:
/// R-13 in the cavity and R-10 in a sheet pass. Zone 2: nothing passes. Zone 3: R-5 in a sheet or R-13.
#[test]
fn g26_iecc_by_the_table_of_pnnl() {
    let old = |foam, cavity| furred("5", foam, cavity).edition(Edition::E2018);
    assert!(fails(&old(10, 0)));
    assert!(!fails(&old(15, 0)) && !fails(&old(0, 19)) && !fails(&old(5, 13)));
    let four = |foam, cavity| furred("4", foam, cavity).edition(Edition::E2021);
    assert!(!fails(&four(0, 13)) && !fails(&four(10, 0)) && fails(&four(9, 12)));
    assert!(!fails(&furred("2", 0, 0)));
    assert!(
        !fails(&furred("3", 5, 0)) && !fails(&furred("3", 0, 13)) && fails(&furred("3", 4, 12))
    );
}

fn stated(detail: &'static Detail, value: Value) -> Basement {
    Basement::room(RoomUse::Den).site(|s| s.details.set(detail, Some(value)))
}

/// 4.0 pCi/L is acted upon; from 2.0 to 4.0 a system is considered.
#[test]
fn radon_action_level_aarst_mah_2019() {
    let found = |tenths| {
        let basement = stated(&RADON, Value::Number(tenths));
        basement.findings("radon-level").first().map(|f| f.citation.slug)
    };
    assert_eq!(found(40), Some("radon-act"));
    assert_eq!(found(39), Some("radon-consider"));
    assert_eq!(found(19), None);
}

/// Houses from before 1978.
#[test]
fn lead_and_asbestos_before_1978() {
    assert_eq!(stated(&YEAR_BUILT, Value::Number(1977)).findings("old-house").len(), 1);
    assert!(stated(&YEAR_BUILT, Value::Number(1978)).findings("old-house").is_empty());
}
