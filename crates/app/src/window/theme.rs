//! Colours, sizes and fonts of the window, all from the palette of the drawing.

use std::sync::Arc;

use drawing::{Palette, Tone};
use egui::{
    Color32, Context, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, Stroke,
    TextStyle, Theme, Vec2, Visuals,
    style::{Selection, WidgetVisuals},
};

/// How the window looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Look {
    #[default]
    Light,
    /// "Lights off".
    Dark,
    /// Black on white, as it prints.
    Paper,
}

/// The name of the bold family.
pub const BOLD: &str = "bold";

/// Text sizes of the window in points: small, body, heading.
pub const SMALL: f32 = 11.5;
pub const BODY: f32 = 13.0;
pub const HEADING: f32 = 15.5;

impl Look {
    #[cfg(test)]
    pub const ALL: [Look; 3] = [Look::Light, Look::Dark, Look::Paper];

    pub fn palette(self) -> Palette {
        match self {
            Look::Light => Palette::Light,
            Look::Dark => Palette::Dark,
            Look::Paper => Palette::Print,
        }
    }

    fn theme(self) -> Theme {
        match self {
            Look::Light | Look::Paper => Theme::Light,
            Look::Dark => Theme::Dark,
        }
    }

    /// The colour of a tone.
    pub fn colour(self, tone: Tone) -> Color32 {
        colour(self.palette(), tone)
    }
}

/// A tone as egui's colour.
pub fn colour(palette: Palette, tone: Tone) -> Color32 {
    let rgb = palette.rgb(tone);
    Color32::from_rgb(rgb.0, rgb.1, rgb.2)
}

/// `under` with `share` (0 to 1) of `over` mixed in.
pub fn mix(under: Color32, over: Color32, share: f32) -> Color32 {
    let at = |a: u8, b: u8| (f32::from(a) + (f32::from(b) - f32::from(a)) * share).round() as u8;
    Color32::from_rgb(at(under.r(), over.r()), at(under.g(), over.g()), at(under.b(), over.b()))
}

/// The bold version of a size.
pub fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name(BOLD.into()))
}

/// Puts the one family of the drawing first everywhere, so that screen and print share their glyphs.
pub fn install_fonts(ctx: &Context) {
    let mut fonts = FontDefinitions::default();
    let plain = Arc::new(FontData::from_static(drawing::fonts::REGULAR));
    let heavy = Arc::new(FontData::from_static(drawing::fonts::BOLD));
    fonts.font_data.insert("plain".to_owned(), plain);
    fonts.font_data.insert("heavy".to_owned(), heavy);
    for family in [FontFamily::Proportional, FontFamily::Monospace] {
        fonts.families.entry(family).or_default().insert(0, "plain".to_owned());
    }
    fonts
        .families
        .insert(FontFamily::Name(BOLD.into()), vec!["heavy".to_owned(), "plain".to_owned()]);
    ctx.set_fonts(fonts);
}

/// Sets what does not change with the look.
pub fn install(ctx: &Context) {
    install_fonts(ctx);
    ctx.options_mut(|o| {
        // Ctrl with plus and minus zooms the plan, not the window; quitting asks about unsaved work.
        o.zoom_with_keyboard = false;
        o.quit_shortcuts.clear();
    });
    ctx.all_styles_mut(|style| {
        let family = FontFamily::Proportional;
        style.text_styles = [
            (TextStyle::Small, FontId::new(SMALL, family.clone())),
            (TextStyle::Body, FontId::new(BODY, family.clone())),
            (TextStyle::Button, FontId::new(BODY, family.clone())),
            (TextStyle::Monospace, FontId::new(BODY, FontFamily::Monospace)),
            (TextStyle::Heading, bold(HEADING)),
        ]
        .into();
        let spacing = &mut style.spacing;
        spacing.interact_size = Vec2::new(40.0, 24.0);
        spacing.item_spacing = Vec2::new(6.0, 4.0);
        spacing.button_padding = Vec2::new(8.0, 3.0);
        spacing.window_margin = Margin::same(16);
        spacing.menu_margin = Margin::same(6);
        spacing.tooltip_width = 340.0;
        let scroll = &mut spacing.scroll;
        *scroll = egui::style::ScrollStyle::floating();
        scroll.bar_width = 8.0;
        scroll.floating_width = 6.0;
        scroll.floating_allocated_width = 10.0;
        scroll.dormant_background_opacity = 0.0;
        scroll.dormant_handle_opacity = 0.5;
        scroll.active_handle_opacity = 0.6;
        scroll.interact_handle_opacity = 0.9;
        style.interaction.selectable_labels = false;
        style.interaction.tooltip_delay = 0.5;
        style.animation_time = 0.0;
    });
}

/// Shows the window in a look.
pub fn apply(ctx: &Context, look: Look) {
    ctx.set_visuals_of(look.theme(), visuals(look));
    ctx.set_theme(look.theme());
}

fn widget(fill: Color32, line: Color32, text: Color32, width: f32) -> WidgetVisuals {
    WidgetVisuals {
        bg_fill: fill,
        weak_bg_fill: fill,
        bg_stroke: Stroke::new(width, line),
        corner_radius: CornerRadius::same(4),
        fg_stroke: Stroke::new(1.5, text),
        expansion: 0.0,
    }
}

/// The widgets' colours in a look.
pub fn visuals(look: Look) -> Visuals {
    let tone = |t| look.colour(t);
    let (paper, ink, soft) = (tone(Tone::Paper), tone(Tone::Ink), tone(Tone::SoftInk));
    let new = tone(Tone::New);
    let mut v = match look.theme() {
        Theme::Light => Visuals::light(),
        Theme::Dark => Visuals::dark(),
    };
    // Fields and buttons are told from the pane by their outline, which has 3:1.
    let outline = mix(paper, soft, 0.72);
    let field = match look {
        Look::Dark => mix(paper, Color32::BLACK, 0.35),
        Look::Light | Look::Paper => mix(paper, Color32::WHITE, 0.8),
    };
    let button = mix(paper, ink, 0.05);
    let over = mix(paper, new, 0.14);
    v.panel_fill = paper;
    v.window_fill = paper;
    v.window_stroke = Stroke::new(1.0, outline);
    v.window_corner_radius = CornerRadius::same(6);
    v.menu_corner_radius = CornerRadius::same(4);
    v.extreme_bg_color = field;
    v.text_edit_bg_color = Some(field);
    v.faint_bg_color = mix(paper, ink, 0.04);
    v.code_bg_color = mix(paper, ink, 0.06);
    v.hyperlink_color = new;
    v.warn_fg_color = tone(Tone::Verify);
    v.error_fg_color = tone(Tone::Stop);
    v.weak_text_color = Some(soft);
    v.disabled_alpha = 0.62;
    v.widgets.noninteractive = widget(paper, mix(paper, soft, 0.35), ink, 1.0);
    v.widgets.inactive = widget(button, outline, ink, 1.0);
    v.widgets.hovered = widget(over, new, ink, 1.5);
    v.widgets.active = widget(mix(paper, new, 0.24), new, ink, 2.0);
    v.widgets.open = widget(over, new, ink, 1.0);
    // On paper the tint of new work is white, so what is chosen is grey there.
    let chosen = match look {
        Look::Paper => mix(paper, ink, 0.16),
        Look::Light | Look::Dark => tone(Tone::NewFill),
    };
    v.selection = Selection { bg_fill: chosen, stroke: Stroke::new(1.5, new) };
    v.text_cursor.stroke = Stroke::new(2.0, new);
    v
}

#[cfg(test)]
mod tests {
    use super::*;

    /// WCAG 2.2, 1.4.3: text 4.5:1.
    const TEXT: f64 = 4.5;
    /// WCAG 2.2, 1.4.11: outlines of controls and marks that carry meaning 3:1.
    const MARK: f64 = 3.0;

    fn contrast(a: Color32, b: Color32) -> f64 {
        let rgb = |c: Color32| drawing::Rgb(c.r(), c.g(), c.b());
        drawing::contrast(rgb(a), rgb(b))
    }

    #[test]
    fn text_of_every_widget_reads_on_its_fill() {
        for look in Look::ALL {
            let v = visuals(look);
            let states = [
                ("still", &v.widgets.noninteractive),
                ("inactive", &v.widgets.inactive),
                ("hovered", &v.widgets.hovered),
                ("active", &v.widgets.active),
                ("open", &v.widgets.open),
            ];
            for (name, w) in states {
                for fill in [w.bg_fill, w.weak_bg_fill] {
                    let c = contrast(w.fg_stroke.color, fill);
                    assert!(c >= TEXT, "{look:?} {name}: {c:.2}");
                }
            }
            let ink = v.widgets.inactive.fg_stroke.color;
            let soft = v.weak_text_color.unwrap();
            for (name, text, ground) in [
                ("text on a pane", ink, v.panel_fill),
                ("soft text on a pane", soft, v.panel_fill),
                ("soft text on a field", soft, v.extreme_bg_color),
                ("text in a field", ink, v.extreme_bg_color),
                ("selected", v.selection.stroke.color, v.selection.bg_fill),
                ("selected text", ink, v.selection.bg_fill),
                ("link", v.hyperlink_color, v.panel_fill),
                ("warning", v.warn_fg_color, v.panel_fill),
                ("error", v.error_fg_color, v.panel_fill),
                ("advice", look.colour(Tone::Advice), v.panel_fill),
                ("tape", look.colour(Tone::TapeInk), look.colour(Tone::Tape)),
                ("rulers", look.colour(Tone::SoftInk), look.colour(Tone::Ground)),
            ] {
                let c = contrast(text, ground);
                assert!(c >= TEXT, "{look:?} {name}: {c:.2}");
            }
        }
    }

    #[test]
    fn outlines_of_controls_stand_out() {
        for look in Look::ALL {
            let v = visuals(look);
            for (name, line, ground) in [
                ("button", v.widgets.inactive.bg_stroke.color, v.panel_fill),
                ("field", v.widgets.inactive.bg_stroke.color, v.extreme_bg_color),
                ("hovered", v.widgets.hovered.bg_stroke.color, v.panel_fill),
                ("focus", v.selection.stroke.color, v.panel_fill),
            ] {
                let c = contrast(line, ground);
                assert!(c >= MARK, "{look:?} {name}: {c:.2}");
            }
        }
    }
}
