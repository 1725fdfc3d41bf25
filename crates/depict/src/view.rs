//! Where the plan lies on the screen, and how large. Plan y is up, screen y is down.

use drawing::P;
use geometry::{Bounds, Pt};
use measure::Len;

/// A view of the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// Screen points per plan unit (1/320 mm).
    pub scale: f64,
    /// The plan coordinates, in plan units, of the screen's left top corner.
    pub origin: (f64, f64),
    /// Width and height of the screen area in points.
    pub size: (f32, f32),
}

impl View {
    /// The smallest scale that zooming reaches: a foot is 1 point.
    pub const LEAST_SCALE: f64 = 1.0 / Len::PER_FOOT as f64;
    /// The largest: an inch is 120 points.
    pub const MOST_SCALE: f64 = 120.0 / Len::PER_INCH as f64;

    /// The view that shows `bounds` centred, with `margin` points left free on every side. An empty box
    /// shows 40 ft from the plan's origin.
    pub fn fit(bounds: Bounds, size: (f32, f32), margin: f32) -> View {
        let bounds = if bounds.is_empty() {
            Bounds::of([Pt::new(0, 0), Pt::inches(480, 360)])
        } else {
            bounds
        };
        let span = |low: i32, high: i32| (f64::from(high) - f64::from(low)).max(1.0);
        let (w, h) = (span(bounds.min.x, bounds.max.x), span(bounds.min.y, bounds.max.y));
        let free = |v: f32| f64::from((v - 2.0 * margin).max(1.0));
        let scale =
            (free(size.0) / w).min(free(size.1) / h).clamp(View::LEAST_SCALE, View::MOST_SCALE);
        let middle = (
            (f64::from(bounds.min.x) + f64::from(bounds.max.x)) / 2.0,
            (f64::from(bounds.min.y) + f64::from(bounds.max.y)) / 2.0,
        );
        View {
            scale,
            origin: (
                middle.0 - f64::from(size.0) / 2.0 / scale,
                middle.1 + f64::from(size.1) / 2.0 / scale,
            ),
            size,
        }
    }

    /// The screen point of a plan point.
    pub fn screen_from_plan(&self, p: Pt) -> P {
        P {
            x: ((f64::from(p.x) - self.origin.0) * self.scale) as f32,
            y: ((self.origin.1 - f64::from(p.y)) * self.scale) as f32,
        }
    }

    /// The plan point under a screen point, rounded to the grid and kept within the plan's limits.
    pub fn plan_from_screen(&self, p: P) -> Pt {
        let limit = f64::from(Len::COORD_LIMIT.units());
        let whole = |v: f64| v.round().clamp(-limit, limit) as i32;
        Pt::new(
            whole(self.origin.0 + f64::from(p.x) / self.scale),
            whole(self.origin.1 - f64::from(p.y) / self.scale),
        )
    }

    /// A length in screen points.
    pub fn points(&self, len: Len) -> f32 {
        (f64::from(len.units()) * self.scale) as f32
    }

    /// The length of some screen points, rounded.
    pub fn len(&self, points: f32) -> Len {
        let limit = f64::from(Len::COORD_LIMIT.units());
        Len::from_units((f64::from(points) / self.scale).round().clamp(-limit, limit) as i32)
    }

    /// Screen points in an inch of the plan.
    pub fn points_per_inch(&self) -> f32 {
        self.points(Len::inches(1))
    }

    /// The part of the plan on the screen.
    pub fn bounds(&self) -> Bounds {
        Bounds::of([
            self.plan_from_screen(P::new(0.0, 0.0)),
            self.plan_from_screen(P::new(self.size.0, self.size.1)),
        ])
    }

    /// The view zoomed by `factor` so that what is under `about` stays there.
    pub fn zoomed(&self, about: P, factor: f64) -> View {
        let scale = (self.scale * factor).clamp(View::LEAST_SCALE, View::MOST_SCALE);
        let (x, y) = (f64::from(about.x), f64::from(about.y));
        View {
            scale,
            origin: (
                self.origin.0 + x / self.scale - x / scale,
                self.origin.1 - y / self.scale + y / scale,
            ),
            size: self.size,
        }
    }

    /// The view with its content moved by `dx`, `dy` screen points.
    pub fn panned(&self, dx: f32, dy: f32) -> View {
        View {
            origin: (
                self.origin.0 - f64::from(dx) / self.scale,
                self.origin.1 + f64::from(dy) / self.scale,
            ),
            ..*self
        }
    }

    /// A ring on the screen.
    pub(crate) fn ring(&self, ring: &[Pt]) -> Vec<P> {
        ring.iter().map(|p| self.screen_from_plan(*p)).collect()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn fit_centres_and_flips_y() {
        let view =
            View::fit(Bounds::of([Pt::new(0, 0), Pt::inches(400, 200)]), (840.0, 440.0), 20.0);
        assert!((view.points_per_inch() - 2.0).abs() < 1e-4);
        assert_eq!(view.screen_from_plan(Pt::new(0, 0)), P::new(20.0, 420.0));
        assert_eq!(view.screen_from_plan(Pt::inches(400, 200)), P::new(820.0, 20.0));
    }

    proptest! {
        #[test]
        fn screen_and_plan_are_inverse(
            x in -10_000_000i32..10_000_000, y in -10_000_000i32..10_000_000, ppi in 0.2f64..60.0,
        ) {
            let mut view = View::fit(Bounds::of([Pt::new(x, y)]), (900.0, 700.0), 0.0);
            view.scale = ppi / f64::from(Len::PER_INCH);
            let p = Pt::new(x, y);
            let back = view.plan_from_screen(view.screen_from_plan(p));
            // A screen coordinate is an f32: off the screen it is good to 1/100 point.
            let slack = (0.01 / view.scale) as i64 + 1
                + (f64::from(view.screen_from_plan(p).x).abs() / 1e6 / view.scale) as i64;
            prop_assert!((back - p).x.abs() <= slack && (back - p).y.abs() <= slack);
        }

        #[test]
        fn zoom_keeps_the_point_under_the_pointer(fx in 0f32..900.0, fy in 0f32..700.0, f in 0.5f64..2.0) {
            let view = View::fit(Bounds::EMPTY, (900.0, 700.0), 30.0);
            let at = view.plan_from_screen(P::new(fx, fy));
            let p = view.zoomed(P::new(fx, fy), f).screen_from_plan(at);
            prop_assert!((p.x - fx).abs() < 0.01 && (p.y - fy).abs() < 0.01);
        }
    }
}
