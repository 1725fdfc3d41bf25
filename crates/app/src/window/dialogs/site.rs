//! The facts of the site.

use egui::{Label, RichText, Ui};
use measure::{Len, Precision, System};
use plan::{CeilingBuild, Edition, House, Site, bounds};

use super::super::form::Form;
use super::super::inspector::details;
use super::amendments::{self, Draft};
use super::{Answer, foot, heading};

/// The kinds of ceiling, without their figure.
#[derive(Clone, Copy, PartialEq)]
enum Ceiling {
    Open,
    Board,
    LayIn,
}

/// What is entered in the dialog.
#[derive(Debug)]
pub struct SiteForm {
    site: Site,
    draft: Draft,
}

impl SiteForm {
    /// The facts as they are.
    pub fn of(site: Site) -> SiteForm {
        SiteForm { site, draft: Draft::default() }
    }
}

/// Edits the facts; they are kept when it is said so.
pub fn show(ui: &mut Ui, form: &mut SiteForm, system: System) -> Option<Answer> {
    heading(ui, "Site facts");
    // As high as the window lets it be: a list of amendments may be long.
    let height = (ui.ctx().content_rect().height() - 190.0).clamp(160.0, 700.0);
    egui::ScrollArea::vertical()
        .max_height(height)
        .min_scrolled_height(height)
        .show(ui, |ui| facts(ui, form, system));
    let site = &form.site;
    let fits = bounds::CEILING_HEIGHT.holds(site.ceiling_height());
    if !fits {
        let text = format!(
            "The finished ceiling height must be {}.",
            bounds::CEILING_HEIGHT.accepted(system)
        );
        ui.label(RichText::new(text).color(ui.visuals().error_fg_color));
    }
    let pressed = foot(ui, if fits { &["Keep", "Cancel"] } else { &["Cancel"] })?;
    if fits && pressed == 0 {
        return Some(Answer::Site(Box::new(site.clone())));
    }
    Some(Answer::Leave)
}

fn facts(ui: &mut Ui, form: &mut SiteForm, system: System) {
    let SiteForm { site, draft } = form;
    let mut form = Form::new(system);
    form.text(ui, "Project", &mut site.title, bounds::TITLE);
    let editions = Edition::ALL.map(|e| (e, e.year().to_string()));
    let editions: Vec<(Edition, &str)> = editions.iter().map(|(e, y)| (*e, y.as_str())).collect();
    form.among(ui, "Code edition", &mut site.edition, &editions);
    let houses = [(House::Existing, "existing"), (House::New, "new")];
    form.among(ui, "House", &mut site.house, &houses);
    form.check(ui, "Automatic sprinklers in the house", &mut site.sprinklers);
    form.len(ui, "Joist underside", &mut site.joist_underside, bounds::JOIST_UNDERSIDE);
    ceiling(ui, &mut form, &mut site.ceiling);
    form.len(ui, "Floor build-up", &mut site.floor_build, bounds::FLOOR_BUILD);
    let height = site.ceiling_height();
    form.fact(ui, "Ceiling height", RichText::new(system.len(height, Precision::Fine)).strong());
    ui.separator();
    amendments::show(ui, &mut form, site, draft);
    ui.separator();
    details::site(ui, &mut form, &mut site.details);
    let why = "Figures of the model code differ by place: ask your building department which edition and which amendments it enforces.";
    ui.add(Label::new(RichText::new(why).weak()).wrap());
}

fn ceiling(ui: &mut Ui, form: &mut Form, build: &mut CeilingBuild) {
    let mut kind = match build {
        CeilingBuild::Open => Ceiling::Open,
        CeilingBuild::Board(_) => Ceiling::Board,
        CeilingBuild::LayIn(_) => Ceiling::LayIn,
    };
    let before = kind;
    let kinds = [
        (Ceiling::Open, "open joists"),
        (Ceiling::Board, "board"),
        (Ceiling::LayIn, "lay-in tiles"),
    ];
    form.among(ui, "Ceiling", &mut kind, &kinds);
    if kind != before {
        *build = match kind {
            Ceiling::Open => CeilingBuild::Open,
            Ceiling::Board => CeilingBuild::Board(Len::sixty_fourths(32)),
            Ceiling::LayIn => CeilingBuild::LayIn(Len::inches(4)),
        };
    }
    match build {
        CeilingBuild::Open => {}
        CeilingBuild::Board(t) => form.len(ui, "Board", t, bounds::CEILING_BUILD),
        CeilingBuild::LayIn(t) => form.len(ui, "Drop of the tiles", t, bounds::CEILING_BUILD),
    }
}
