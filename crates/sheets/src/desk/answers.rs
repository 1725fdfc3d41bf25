//! What answers each demand: a sheet with the thing on it, the checks, or nothing yet.

use plan::detail::opening::HEADER;
use plan::detail::wall::{CAVITY_R, FIREBLOCKED, FOAM_R, TREATED_PLATE, VAPOUR_RETARDER};
use plan::detail::{Detail, heat, site, stair};
use plan::element::{DoorOperation, OpeningKind, OverheadKind, RoomUse, ServiceKind};
use plan::{Body, Element, State};
use rules::Severity;

use super::lists::{Demand, Kind};
use super::{Answer, Department};
use crate::kinds::{Context, cover};
use crate::paper::Paper;

const PLAN: &str = "proposed-plan";
const EXISTING: &str = "existing-plan";
const LOT: &str = "site-sketch";
const CEILING: &str = "ceiling-sections";
const TABLES: &str = "tables";
const WALLS: &str = "wall-sections";
const SERVICES: &str = "services-plan";
const STAIR: &str = "stair-section";
const ELECTRICAL: &str = "electrical-plan";
const MECHANICAL: &str = "mechanical-plan";
const PLUMBING: &str = "plumbing-plan";

const DRAW: &str = "Draw it on the plan.";
const STATE: &str = "State it in the inspector of the element.";
const SITE: &str = "Enter it in the title block.";

pub(super) fn answer(
    context: &Context<'_>,
    (department, one_sheet): (Option<&Department>, bool),
    demand: &Demand,
) -> Answer {
    let desk = At { context, department, one_sheet };
    match demand.kind {
        Kind::Admin => Answer::Reminder,
        Kind::Rule => desk.rule(&demand.id),
        Kind::Drawing => desk.drawing(&demand.id),
    }
}

struct At<'a> {
    context: &'a Context<'a>,
    department: Option<&'a Department>,
    /// Whether one sheet is asked for.
    one_sheet: bool,
}

impl At<'_> {
    /// On the sheet of a kind, where it is there.
    fn on(&self, kind: &str) -> Answer {
        // What is drawn together stands on the sheet of the other.
        let together = match kind {
            EXISTING => PLAN,
            ELECTRICAL | MECHANICAL | PLUMBING => SERVICES,
            kind => kind,
        };
        let of = |kind: &str| self.context.index.iter().find(|entry| entry.kind == kind);
        match of(kind).or_else(|| of(together)) {
            Some(entry) => Answer::Shown(entry.number.clone()),
            None => Answer::Missing { what: "nothing of it is drawn yet", enter: DRAW },
        }
    }

    fn cover(&self) -> Answer {
        Answer::Shown(cover::number(0))
    }

    fn on_if(&self, kind: &str, there: bool, what: &'static str, enter: &'static str) -> Answer {
        if there { self.on(kind) } else { Answer::Missing { what, enter } }
    }

    /// On the sheet where there is such a thing; else it doesn't apply.
    fn on_where(&self, kind: &str, there: bool, none: &'static str) -> Answer {
        if there { self.on(kind) } else { Answer::NothingSuch(none) }
    }

    /// Whether the department whose list is checked names sheets, and all are larger than the one in use.
    fn too_small(&self) -> bool {
        let area = |p: Paper| p.size().0 * p.size().1;
        let named = self.department.map_or(&[][..], |d| &d.papers);
        let named: Vec<Paper> = named.iter().filter_map(|w| Paper::from_word(w)).collect();
        !named.is_empty() && named.iter().all(|p| area(*p) > area(self.context.paper))
    }

    fn standing(&self) -> impl Iterator<Item = &Element> {
        self.context.source.plan().elements().iter().filter(|e| e.stands())
    }

    fn has(&self, test: impl Fn(&Element) -> bool) -> bool {
        self.standing().any(test)
    }

    fn service(&self, kinds: &[ServiceKind]) -> bool {
        self.has(|e| matches!(&e.body, Body::Service(s) if kinds.contains(&s.kind)))
    }

    fn room(&self, uses: &[RoomUse]) -> bool {
        self.context.source.facts.rooms.iter().any(|r| uses.contains(&r.room_use))
    }

    fn door(&self) -> bool {
        self.has(|e| matches!(&e.body, Body::Opening(o) if o.door().is_some()))
    }

    fn window(&self) -> bool {
        self.has(|e| matches!(&e.body, Body::Opening(o) if o.window().is_some()))
    }

    fn new_wall(&self) -> bool {
        self.has(|e| {
            e.state == State::New && matches!(e.body, Body::Partition(_) | Body::Furring(_))
        })
    }

    /// Whether every new wall that a detail fits has it stated.
    fn walls_state(&self, detail: &'static Detail, furring_alone: bool) -> bool {
        self.standing()
            .filter(|e| e.state == State::New)
            .filter(|e| match e.body {
                Body::Furring(_) => true,
                Body::Partition(_) => !furring_alone,
                _ => false,
            })
            .all(|e| e.stated(detail).is_some())
    }

    fn any_states(&self, detail: &'static Detail) -> bool {
        self.standing().any(|e| e.stated(detail).is_some())
    }

    /// By the findings of some rules.
    fn found(&self, rules: &[&str]) -> Answer {
        let open = |severity| {
            let findings = self.context.source.findings.iter();
            findings
                .filter(|f| {
                    f.severity == severity && f.set_aside.is_none() && rules.contains(&f.rule)
                })
                .count()
        };
        match (open(Severity::Correction), open(Severity::Verify)) {
            (0, 0) => Answer::Held,
            (corrections, questions) => Answer::Open { corrections, questions },
        }
    }

    fn found_where(&self, there: bool, rules: &[&str], none: &'static str) -> Answer {
        if there { self.found(rules) } else { Answer::NothingSuch(none) }
    }

    fn rule(&self, id: &str) -> Answer {
        use ServiceKind::*;
        let bedroom = self.room(&[RoomUse::Bedroom]);
        let no_bedroom = "there is no bedroom";
        match id {
            "escape-each-bedroom" => self.found_where(
                bedroom,
                &[
                    "bedroom-without-escape",
                    "escape-area",
                    "escape-width",
                    "escape-height",
                    "escape-sill",
                    "escape-operation",
                    "escape-size-estimated",
                ],
                no_bedroom,
            ),
            "escape-habitable-basement" => self.found(&["basement-without-escape"]),
            "escape-sill-limit" => self.found(&["escape-sill"]),
            "escape-size-limit" => self.found(&[
                "escape-area",
                "escape-width",
                "escape-height",
                "escape-size-estimated",
            ]),
            "escape-size-limit-canada" => {
                Answer::Elsewhere("a figure of the Canadian code: ask the department for it")
            }
            "well-limits" => self.found(&[
                "well-area",
                "well-projection",
                "well-width",
                "well-ladder",
                "well-steps",
                "well-missing",
            ]),
            "smoke-alarm-rule" => self.found(&[
                "bedroom-alarms",
                "storey-alarm",
                "alarm-power",
                "alarms-interconnected",
            ]),
            "co-alarm-rule" => self.found(&["co-alarm"]),
            "alarms-whole-house" => self.found(&["alarms-elsewhere"]),
            "foam-covered" => self.found(&["foam-barrier", "rim-foam"]),
            "heat-each-room" => self.found(&["room-heat", "air-way-back"]),
            "furnace-not-bedroom" => self.found(&[
                "appliance-room",
                "return-air-room",
                "return-near-flame",
                "combustion-openings",
            ]),
            "appliance-removable" => self.found_where(
                self.service(&[Furnace, WaterHeater]),
                &["appliance-passage", "appliance-service-space"],
                "no appliance is drawn",
            ),
            "backwater-valve" => self.found(&["backwater-valve"]),
            "ceiling-height-limit" => self.found(&["ceiling-height"]),
            "room-size-limit" => {
                self.found(&["room-area", "room-dimension", "room-area-under-low-ceiling"])
            }
            "beam-height-allowance" => self.found(&["projection-height"]),
            "door-width-limit" => self.found(&["egress-door", "appliance-passage"]),
            "fixture-clearances" => self.found_where(
                self.has(|e| matches!(&e.body, Body::Furnishing(f) if rules::is_fixture(f))),
                &["fixture-front", "toilet-side", "basin-side", "shower-size"],
                "no bath fixture is drawn",
            ),
            "hall-width" => self.found(&["hall-width"]),
            "gfci" => self.found(&["shock-protection", "shock-protection-reach"]),
            "afci" => self.found(&["arc-protection"]),
            "junction-boxes" => self.found(&["junction-box-access"]),
            "receptacle-spacing" => {
                self.found(&["receptacle-spacing", "receptacle-hall", "receptacle-portion"])
            }
            "under-stair-gypsum" => self.found(&["under-stair"]),
            "stair-light" => self.found(&["stair-light", "stair-switches"]),
            _ => Answer::Elsewhere("no check of the program looks at it"),
        }
    }

    fn drawing(&self, id: &str) -> Answer {
        self.floor_plan(id)
            .or_else(|| self.egress_and_format(id))
            .or_else(|| self.walls_and_structure(id))
            .or_else(|| self.services(id))
            .unwrap_or(Answer::Elsewhere("the program does not draw it: add it by hand"))
    }

    fn floor_plan(&self, id: &str) -> Option<Answer> {
        let facts = self.context.source.facts;
        let plan = self.context.source.plan();
        let unfinished = self.room(&[RoomUse::Unfinished]);
        let removed = plan.elements().iter().any(|e| e.state == State::Removed);
        Some(match id {
            "room-use" => {
                let tagged = !facts.rooms.is_empty() && facts.rooms.iter().all(|r| r.tag.is_some());
                self.on_if(PLAN, tagged, "a room has no use", "Put a room tag into it.")
            }
            "room-dimensions" => self.on_if(
                TABLES,
                !facts.rooms.is_empty(),
                "no room is enclosed",
                "Draw the walls.",
            ),
            "window-locations" => self.on_where(PLAN, self.window(), "there is no window"),
            "window-sizes" | "window-operation" => {
                self.on_where(TABLES, self.window(), "there is no window")
            }
            "door-locations" | "door-swing" => self.on_where(PLAN, self.door(), "there is no door"),
            "door-sizes" => self.on_where(TABLES, self.door(), "there is no door"),
            "existing-and-new" => self.on(PLAN),
            "stairs-located" => self.on_if(
                PLAN,
                self.has(|e| matches!(e.body, Body::Stair(_))),
                "no stair is drawn",
                DRAW,
            ),
            "ceiling-heights" => self.on(TABLES),
            "area-totals" => self.cover(),
            "entire-basement" => self.on(PLAN),
            "finished-before-labelled" => {
                let finished = |e: &Element| {
                    let unfinished = |u| matches!(u, RoomUse::Unfinished | RoomUse::Mechanical);
                    e.state == State::Existing
                        && matches!(&e.body, Body::RoomTag(t) if !unfinished(t.room_use))
                };
                self.on_where(EXISTING, self.has(finished), "nothing is drawn as finished before")
            }
            "fireplace" => {
                Answer::NothingSuch("no fireplace can be drawn; if there is one, add it as a note")
            }
            "unfinished-labelled" => self.on_where(PLAN, unfinished, "no part stays unfinished"),
            "bathroom-layout" => {
                self.on_where(PLAN, self.room(&[RoomUse::Bath]), "there is no bath")
            }
            "closets" => self.on_where(PLAN, self.room(&[RoomUse::Closet]), "there is no closet"),
            "overall-dimensions" => self.on(PLAN),
            "safety-glazing" => self.found_where(
                self.window(),
                &["glass-low", "glass-by-door", "glass-in-bath", "glass-in-door", "glass-by-stair"],
                "there is no window",
            ),
            "walls-removed" => self.on_where(EXISTING, removed, "nothing is removed"),
            "wet-bar-elevation" => {
                let bar =
                    self.has(|e| matches!(&e.body, Body::Furnishing(f) if f.name_holds("bar")));
                match bar {
                    true => Answer::Elsewhere("draw the bar as seen from the front by hand"),
                    false => Answer::NothingSuch("there is no wet bar"),
                }
            }
            _ => return None,
        })
    }

    fn egress_and_format(&self, id: &str) -> Option<Answer> {
        let papers = &self.context.source.plan().site.papers;
        let escape = self.window() || self.door();
        let none = "there is no window or outside door";
        let new_outside = self.has(|e| {
            let Body::Opening(o) = &e.body else { return false };
            let outside = self.context.source.facts.opening(e.id).is_some_and(|f| f.outside);
            e.state == State::New && (outside || matches!(o.kind, OpeningKind::Window(_)))
        });
        let well = self.has(
            |e| matches!(&e.body, Body::Opening(o) if o.window().is_some_and(|w| w.well.is_some())),
        );
        Some(match id {
            "escape-identified" | "escape-opening-dimensions" | "escape-sill-height" => {
                self.on_where(TABLES, escape, none)
            }
            "well-dimensions" => self.on_where(TABLES, well, "there is no window well"),
            "new-opening-site-plan" => {
                let stated = |d: &&Detail| self.context.source.plan().site.details.get(d).is_some();
                let lot = [&site::LOT_LEFT, &site::LOT_RIGHT, &site::LOT_TOP, &site::LOT_BOTTOM];
                match (new_outside, lot.iter().any(stated)) {
                    (false, _) => Answer::NothingSuch("no outside opening is new"),
                    (true, false) => Answer::Missing {
                        what: "how far the lot lines are",
                        enter: "State it in the site facts, by the survey.",
                    },
                    (true, true) => self.on(LOT),
                }
            }
            "to-scale" | "enough-detail" | "ink-straight-edge" => self.on(PLAN),
            "quarter-inch-scale" => {
                let plan = self.context.index.iter().find(|entry| entry.kind == PLAN);
                let usual = plan.is_some_and(|entry| {
                    entry.scale.is_some_and(|s| ["1/4\" = 1'-0\"", "1:50"].contains(&s))
                });
                self.on_if(
                    PLAN,
                    usual,
                    "the plan is drawn smaller than that",
                    "Choose a larger paper.",
                )
            }
            "address-on-drawing" => {
                let there = !papers.address.is_empty() || !papers.parcel.is_empty();
                if there {
                    self.cover()
                } else {
                    Answer::Missing { what: "the address or the parcel", enter: SITE }
                }
            }
            "author-signed" => match papers.author.is_empty() {
                true => Answer::Missing { what: "who drew the plan", enter: SITE },
                false => self.cover(),
            },
            "sheet-size" => match self.too_small() {
                true => Answer::Missing {
                    what: "this department names a larger sheet",
                    enter: "Choose a larger paper.",
                },
                false => self.cover(),
            },
            "code-edition" | "legend-or-index" => self.cover(),
            "one-sheet" => match (self.one_sheet, self.department) {
                (true, _) => self.cover(),
                (false, None) => Answer::Elsewhere(
                    "choose \"Everything on one sheet\" where your department asks for it",
                ),
                (false, Some(_)) => Answer::Missing {
                    what: "the set has several sheets",
                    enter: "Choose \"Everything on one sheet\", and a paper that is large enough.",
                },
            },
            "north-arrow" => match papers.north {
                Some(_) => self.on(PLAN),
                None => Answer::Missing { what: "the direction of north", enter: SITE },
            },
            _ => return None,
        })
    }

    fn walls_and_structure(&self, id: &str) -> Option<Answer> {
        let plan = self.context.source.plan();
        let none = "no new wall is drawn";
        let wall = |stated: bool, what| match (self.new_wall(), stated) {
            (false, _) => Answer::NothingSuch(none),
            (true, false) => Answer::Missing { what, enter: STATE },
            (true, true) => self.on(WALLS),
        };
        let flight = self.has(|e| matches!(e.body, Body::Stair(_)));
        let beam =
            self.has(|e| matches!(&e.body, Body::Overhead(o) if o.kind == OverheadKind::Beam));
        let new_structure = plan.elements().iter().any(|e| {
            e.state != State::Existing
                && match &e.body {
                    Body::Shell(_) | Body::Column(_) => true,
                    Body::Overhead(o) => o.kind == OverheadKind::Beam,
                    _ => false,
                }
        });
        let post = plan.elements().iter().any(|e| matches!(e.body, Body::Column(_)));
        Some(match id {
            "wall-construction" | "wall-section" => wall(true, ""),
            "ceiling-type" => self.on(CEILING),
            "finish-materials" => wall(true, ""),
            "insulation" => {
                let stated = self.walls_state(&FOAM_R, true) || self.walls_state(&CAVITY_R, true);
                wall(stated, "the R-values of the furring")
            }
            "fireblocking" => {
                wall(self.walls_state(&FIREBLOCKED, true), "whether the furring is fireblocked")
            }
            "treated-plate" => {
                wall(self.walls_state(&TREATED_PLATE, false), "the wood of the bottom plates")
            }
            "vapor-barrier" => {
                wall(self.walls_state(&VAPOUR_RETARDER, true), "the vapour retarder of the furring")
            }
            "structural-changes" => match (new_structure, beam) {
                (true, _) => Answer::Elsewhere(
                    "structure is work for an engineer: add the engineer's drawing",
                ),
                (false, true) => self.on(PLAN),
                (false, false) => Answer::NothingSuch("no structure changes"),
            },
            "header-sizes" => {
                let opening = |e: &Element| match &e.body {
                    Body::Opening(o) => {
                        o.door().is_none_or(|d| d.operation != DoorOperation::Bifold)
                    }
                    _ => false,
                };
                let mut new = plan
                    .elements()
                    .iter()
                    .filter(|e| e.state == State::New && opening(e))
                    .peekable();
                if new.peek().is_none() {
                    Answer::NothingSuch("no opening is new")
                } else if new.all(|e| e.stated(&HEADER).is_some()) {
                    self.on(TABLES)
                } else {
                    Answer::Missing { what: "the header of a new opening", enter: STATE }
                }
            }
            "posts-moved" => self.on_where(PLAN, post, "there is no post"),
            "handrail" => match (flight, self.any_states(&stair::HANDRAIL)) {
                (false, _) => Answer::NothingSuch("there is no stair"),
                (true, true) => self.on(STAIR),
                (true, false) => Answer::Missing { what: "the handrail", enter: STATE },
            },
            "stair-detail" => self.on_where(STAIR, flight, "there is no stair"),
            "guard" => {
                self.found_where(flight, &["guard-missing", "guard-openings"], "there is no stair")
            }
            _ => return None,
        })
    }

    fn services(&self, id: &str) -> Option<Answer> {
        use ServiceKind::*;
        let fixture = self.has(|e| matches!(&e.body, Body::Furnishing(f) if rules::is_fixture(f)));
        let bath = self.room(&[RoomUse::Bath]);
        let burner = self.service(&[Furnace, WaterHeater]);
        let thing =
            |sheet, kinds: &[ServiceKind], what| self.on_if(sheet, self.service(kinds), what, DRAW);
        Some(match id {
            "smoke-alarms" => thing(ELECTRICAL, &[SmokeAlarm], "no smoke alarm is drawn"),
            "co-alarms" => {
                let site = &self.context.source.plan().site.details;
                let burns = burner
                    || self.service(&[GasValve, GasMeter])
                    || site.get(&site::FUEL_IN_HOUSE).is_some_and(|v| v.yes() == Some(true));
                match burns || self.service(&[CoAlarm]) {
                    true => thing(ELECTRICAL, &[CoAlarm], "no carbon monoxide alarm is drawn"),
                    false => Answer::NothingSuch("nothing that burns is drawn or stated"),
                }
            }
            "furnace-located" => thing(MECHANICAL, &[Furnace], "no furnace is drawn"),
            "water-heater-located" => thing(MECHANICAL, &[WaterHeater], "no water heater is drawn"),
            "heating-layout" => {
                let layout = self.service(&[SupplyRegister]);
                self.on_if(
                    MECHANICAL,
                    layout,
                    "no supply register is drawn",
                    "Place registers, or state of each room that it is heated.",
                )
            }
            "appliance-clearances" => self.found_where(
                burner,
                &["label-clearance", "appliance-service-space"],
                "no appliance is drawn",
            ),
            "bath-fan" => self.found_where(
                bath,
                &["bath-vent", "bath-fan-end", "bath-fan-rate"],
                "there is no bath",
            ),
            "combustion-air" => self.found_where(
                burner,
                &["combustion-volume", "combustion-openings"],
                "no appliance is drawn",
            ),
            "fuel-and-gas-line" => match (burner, self.any_states(&heat::FUEL)) {
                (false, _) => Answer::NothingSuch("no appliance is drawn"),
                (true, false) => Answer::Missing {
                    what: "the fuel and the input of the appliances",
                    enter: STATE,
                },
                (true, true) => self.on(MECHANICAL),
            },
            "return-grilles" => thing(MECHANICAL, &[ReturnGrille], "no return grille is drawn"),
            "supply-registers" => {
                thing(MECHANICAL, &[SupplyRegister], "no supply register is drawn")
            }
            "heat-loss" => Answer::Elsewhere("ask the contractor for the load calculation"),
            "fixture-locations" | "fixture-count" => {
                self.on_where(PLUMBING, fixture, "no fixture is added")
            }
            "pipe-layout" => match fixture {
                true => Answer::Elsewhere("the plumber's diagram of drains and vents"),
                false => Answer::NothingSuch("no fixture is added"),
            },
            "sump-ejector" => self.on_where(
                PLUMBING,
                self.service(&[Sump, Ejector]),
                "there is no sump or ejector",
            ),
            "access-panels" => self.on_where(
                PLUMBING,
                self.service(&[MainWaterValve, FixtureValve, Cleanout, WaterMeter]),
                "there is no valve, cleanout or meter",
            ),
            "meter-and-drains" => thing(
                PLUMBING,
                &[WaterMeter, Cleanout, FloorDrain],
                "no meter, cleanout or floor drain is drawn",
            ),
            "light-and-vent" => self.found(&["bedroom-light", "room-daylight", "room-air"]),
            "receptacles" => thing(ELECTRICAL, &[Receptacle], "no receptacle is drawn"),
            "panel-located" => thing(ELECTRICAL, &[Panel], "no panel is drawn"),
            "lights" => thing(ELECTRICAL, &[Light], "no light is drawn"),
            "switches" => thing(ELECTRICAL, &[Switch], "no switch is drawn"),
            "service-size" => match (
                self.service(&[Panel]),
                self.context.source.plan().site.details.get(&site::SERVICE_RATING).is_some(),
            ) {
                (false, _) => Answer::Missing { what: "no panel is drawn", enter: DRAW },
                (true, false) => Answer::Missing {
                    what: "the rating of the service",
                    enter: "State it in the site facts.",
                },
                (true, true) => self.on(ELECTRICAL),
            },
            _ => return None,
        })
    }
}
