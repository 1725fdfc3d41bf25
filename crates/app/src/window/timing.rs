//! How long the window's own code takes for a frame.

use std::time::Duration;

/// Times of the frames of one run, in microseconds.
#[derive(Debug, Default)]
pub struct Timing {
    micros: Vec<u32>,
}

impl Timing {
    pub fn add(&mut self, frame: Duration) {
        self.micros.push(u32::try_from(frame.as_micros()).unwrap_or(u32::MAX));
    }

    /// Percentiles and a histogram, for the terminal.
    pub fn report(&self) -> String {
        let mut sorted = self.micros.clone();
        sorted.sort_unstable();
        if sorted.is_empty() {
            return "no frames\n".to_owned();
        }
        let at = |per_mille: usize| sorted[(sorted.len() - 1) * per_mille / 1000];
        let ms = |micros: u32| f64::from(micros) / 1000.0;
        let mut text = format!(
            "{} frames: p50 {:.2} ms, p90 {:.2} ms, p99 {:.2} ms, longest {:.2} ms\n",
            sorted.len(),
            ms(at(500)),
            ms(at(900)),
            ms(at(990)),
            ms(at(1000)),
        );
        let mut from = 0;
        for edge in [250, 500, 1_000, 2_000, 4_000, 8_000, 16_000, 33_000, u32::MAX] {
            let to = sorted.partition_point(|m| *m < edge);
            let name = match edge {
                u32::MAX => "longer".to_owned(),
                _ => format!("under {:.2} ms", ms(edge)),
            };
            text += &format!("{name:>16} {:>6}\n", to - from);
            from = to;
        }
        text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_frame_is_in_the_histogram_once() {
        let mut timing = Timing::default();
        for micros in [100, 300, 300, 5_000, 90_000] {
            timing.add(Duration::from_micros(micros));
        }
        let report = timing.report();
        assert!(report.starts_with("5 frames: p50 0.30 ms"), "{report}");
        let counts =
            report.lines().skip(1).filter_map(|l| l.rsplit(' ').next()?.parse::<u32>().ok());
        assert_eq!(counts.sum::<u32>(), 5);
    }
}
