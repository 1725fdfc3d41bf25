//! Times of a bench at every size, with the slope of a line through them in a plot with two logarithmic axes.

use std::sync::OnceLock;
use std::time::{Duration, Instant};

use super::SIZES;

/// Time since the first call.
#[expect(clippy::disallowed_methods, reason = "a bench measures time")]
pub fn clock() -> Duration {
    static START: OnceLock<Instant> = OnceLock::new();
    START.get_or_init(Instant::now).elapsed()
}

/// How long something takes.
pub fn time<T>(work: impl FnOnce() -> T) -> Duration {
    let start = clock();
    let made = std::hint::black_box(work());
    let spent = clock().saturating_sub(start);
    drop(made);
    spent
}

pub fn percentile(times: &[Duration], percent: usize) -> Duration {
    let mut times = times.to_vec();
    times.sort_unstable();
    times[(times.len() - 1) * percent / 100]
}

pub fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

/// The least-squares slope of log time over log size.
pub fn slope(times: &[Duration]) -> f64 {
    let x = SIZES.map(|n| (n as f64).ln());
    let y: Vec<f64> = times.iter().map(|t| t.as_secs_f64().max(1e-9).ln()).collect();
    let mean = |v: &[f64]| v.iter().sum::<f64>() / v.len() as f64;
    let (mx, my) = (mean(&x), mean(&y));
    let over: f64 = x.iter().zip(&y).map(|(x, y)| (x - mx) * (y - my)).sum();
    over / x.iter().map(|x| (x - mx) * (x - mx)).sum::<f64>()
}

/// One line: a name, the time at each size in ms, and the slope.
pub fn line(out: &mut impl std::io::Write, name: &str, times: &[Duration]) -> std::io::Result<()> {
    write!(out, "{name:<34}")?;
    for time in times {
        write!(out, " {:>9.3}", ms(*time))?;
    }
    writeln!(out, "   slope {:>5.2}", slope(times))
}

/// The heads of the columns.
pub fn heads(out: &mut impl std::io::Write, what: &str) -> std::io::Result<()> {
    write!(out, "{what:<34}")?;
    for n in SIZES {
        write!(out, " {n:>9}")?;
    }
    writeln!(out)
}
