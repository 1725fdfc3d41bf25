//! `rehearse`: drives the editor by a script of gestures (documented in docs/rehearse.md).

use std::fs;
use std::io::{self, Read, Write};
use std::sync::OnceLock;
use std::time::{Duration, Instant};

use editor::script::{self, Report};
use editor::{Session, Work};
use plan::Plan;
use serde_json::{Value, json};

use super::args::RehearseArgs;
use super::exit;
use crate::store;

pub fn run(args: &RehearseArgs, out: &mut dyn Write, err: &mut dyn Write) -> io::Result<u8> {
    let script = match read(args) {
        Ok(script) => script,
        Err(e) => {
            writeln!(err, "{}: the script could not be read ({e}).", args.script.display())?;
            return Ok(exit::FILE);
        }
    };
    let plan = match &args.plan {
        None => Plan::default(),
        Some(path) => match store::open(path) {
            Ok(opened) => opened.plan,
            Err(e) => {
                writeln!(err, "{e}")?;
                return Ok(exit::FILE);
            }
        },
    };
    let report = script::run(&script, Session::new(plan), clock);
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &to_json(&report))?;
        writeln!(out)?;
    } else {
        for step in &report.steps {
            writeln!(out, "{step}")?;
        }
    }
    if let Some(problem) = &report.problem {
        let script = args.script.display();
        writeln!(err, "{script}:{}: {}: {}", problem.line, problem.command, problem.what)?;
        return Ok(if problem.unmet { exit::CORRECTIONS } else { exit::USAGE });
    }
    if let Some(path) = &args.save
        && let Err(e) = store::save(path, report.session.plan())
    {
        writeln!(err, "{e}")?;
        return Ok(exit::FILE);
    }
    Ok(exit::OK)
}

fn read(args: &RehearseArgs) -> io::Result<String> {
    if args.script.as_os_str() == "-" {
        let mut text = String::new();
        io::stdin().read_to_string(&mut text)?;
        return Ok(text);
    }
    fs::read_to_string(&args.script)
}

/// Time since the first look.
fn clock() -> Duration {
    static START: OnceLock<Instant> = OnceLock::new();
    START.get_or_init(Instant::now).elapsed()
}

fn to_json(report: &Report) -> Value {
    let step = |step: &script::Step| {
        let mut value = json!({ "line": step.line, "command": step.command, "said": step.said });
        for (name, time) in parts(&step.work) {
            value[format!("{name}_ms")] = json!(ms(time));
        }
        value
    };
    let problem = report
        .problem
        .as_ref()
        .map(|p| json!({ "line": p.line, "command": p.command, "what": p.what, "unmet": p.unmet }));
    json!({
        "schema": 1,
        "steps": report.steps.iter().map(step).collect::<Vec<_>>(),
        "problem": problem,
    })
}

fn parts(work: &Work) -> [(&'static str, Duration); 3] {
    [("edit", work.edit), ("derive", work.derive), ("check", work.check)]
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}
