//! A virtual screen with the program's window on it, worked with mouse and keyboard.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread::sleep;
use std::time::{Duration, Instant};

use serde_json::Value;

/// How long a person would wait before calling it broken.
const PATIENCE: Duration = Duration::from_secs(20);
const SIZE: (u32, u32) = (1600, 1200);

/// A virtual screen.
pub struct Desk {
    display: String,
    server: Child,
}

impl Desk {
    pub fn new(number: u32) -> Desk {
        let display = format!(":{number}");
        let server = Command::new("Xvfb")
            .args([&display, "-screen", "0", &format!("{}x{}x24", SIZE.0, SIZE.1)])
            .stderr(Stdio::null())
            .spawn()
            .expect("Xvfb starts");
        let desk = Desk { display, server };
        let began = Instant::now();
        while desk.xdotool(&["getmouselocation"]).is_none() {
            assert!(began.elapsed() < PATIENCE, "the screen does not come up");
            sleep(Duration::from_millis(100));
        }
        desk
    }

    fn xdotool(&self, args: &[&str]) -> Option<String> {
        let output =
            Command::new("xdotool").args(args).env("DISPLAY", &self.display).output().ok()?;
        output.status.success().then(|| String::from_utf8_lossy(&output.stdout).into_owned())
    }

    fn act(&self, args: &[&str]) {
        assert!(self.xdotool(args).is_some(), "xdotool {args:?}");
    }
}

impl Drop for Desk {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

/// The program's window.
pub struct Window<'a> {
    desk: &'a Desk,
    program: Child,
    tell: PathBuf,
    /// The line of the story that is being played.
    place: String,
}

impl Drop for Window<'_> {
    fn drop(&mut self) {
        // A picture of what went wrong, where a folder for it is named and ImageMagick is there.
        if std::thread::panicking()
            && let Some(folder) = std::env::var_os("CELLARWRIGHT_SHOTS")
        {
            let shot = PathBuf::from(folder).join("failed.png");
            let mut import = Command::new("import");
            import.args(["-window", "root"]).arg(shot).env("DISPLAY", &self.desk.display);
            let _ = import.status();
        }
        self.kill();
    }
}

impl<'a> Window<'a> {
    /// Opens a plan; recovery copies go into `folder`.
    pub fn open(desk: &'a Desk, plan: &Path, folder: &Path) -> Window<'a> {
        let tell = folder.join("told.json");
        let _ = fs::remove_file(&tell);
        let program = std::env::var_os("CELLARWRIGHT")
            .map_or_else(|| target().join("cellarwright"), PathBuf::from);
        let program = Command::new(&program)
            .arg(plan)
            .arg("--tell")
            .arg(&tell)
            .env("DISPLAY", &desk.display)
            .env_remove("WAYLAND_DISPLAY")
            .env("CELLARWRIGHT_STATE", folder.join("state"))
            .spawn()
            .unwrap_or_else(|e| panic!("{}: {e}", program.display()));
        let mut window = Window { desk, program, tell, place: String::new() };
        window.wait_for("Select");
        let name = plan.file_name().expect("a name").to_string_lossy();
        let id = desk.xdotool(&["search", "--name", &name]).expect("the window has a title");
        let id = id.lines().next().expect("a window").to_owned();
        desk.act(&["windowmove", &id, "0", "0"]);
        desk.act(&["windowsize", &id, &SIZE.0.to_string(), &SIZE.1.to_string()]);
        desk.act(&["windowfocus", &id]);
        window.settle();
        // All of a basement of 28 ft by 36 ft in view, whatever a blank plan is fitted to.
        window.key("ctrl+0", 1);
        window.settle();
        window
    }

    pub fn at(&mut self, number: usize, line: &str) {
        self.place = format!("line {number}: {line}");
    }

    /// Plays one line of a rehearse script with mouse and keyboard.
    pub fn play(&mut self, line: &str) {
        let (command, rest) = line.split_once(' ').unwrap_or((line, ""));
        match command {
            "tool" => {
                let tool = tool_word(rest);
                self.press_thing(|name| name == tool);
            }
            "move" => self.point_at(rest),
            "press" => {
                self.point_at(rest);
                self.desk.act(&["mousedown", "1"]);
                self.settle();
            }
            "release" => {
                self.point_at(rest);
                self.desk.act(&["mouseup", "1"]);
                self.settle();
            }
            "enter" => {
                self.typed(rest);
                self.key("Return", 1);
            }
            "key" => self.key(key_word(rest), 1),
            "option" => {
                let (field, value) = field_of(rest);
                self.fill(Pane::Kit, field, value);
            }
            "set" => {
                let (element, rest) = rest.split_once(' ').expect("an element and a field");
                let (field, value) = field_of(rest);
                self.pick(element);
                self.fill(Pane::Inspector, field, value);
            }
            "expect" => self.expect(rest),
            _ => panic!("{}: not known here", self.place),
        }
    }

    fn expect(&mut self, what: &str) {
        let (wanted, rule) = match what.strip_prefix("no finding ") {
            Some(rule) => (false, rule),
            None => (true, what.strip_prefix("finding ").expect("a finding")),
        };
        let part = match rule {
            "panel-depth" => "Too little depth in front of electrical panel",
            "escape-area" => "the way out of Study, is too small",
            _ => panic!("{}: no title for {rule}", self.place),
        };
        let began = Instant::now();
        while self.findings().iter().any(|f| f.contains(part)) != wanted {
            assert!(began.elapsed() < PATIENCE, "{}: there are {:?}", self.place, self.findings());
            sleep(Duration::from_millis(50));
        }
    }

    /// The titles of the findings in the list.
    fn findings(&self) -> Vec<String> {
        self.things().into_iter().filter(|t| t.role == "ListItem").map(|t| t.name).collect()
    }

    /// Selects an element by clicking it; the first click may go to a finding's badge that lies on it.
    fn pick(&mut self, element: &str) {
        let word = format!(" {element}");
        let is = |name: &str| name.split(',').next().is_some_and(|head| head.ends_with(&word));
        let thing = self.thing(|t| t.role == "GraphicsObject" && is(&t.name));
        let (x, y) = thing.middle();
        let alone = |t: &Thing| Pane::Inspector.holds(t) && t.name.ends_with(&word);
        self.click(x, y);
        if !self.things().iter().any(alone) {
            // Far enough from the first for no double click.
            sleep(Duration::from_millis(700));
            self.click(x, y);
        }
        self.thing(alone);
    }

    fn fill(&mut self, pane: Pane, field: &str, value: &str) {
        match field {
            // Service points are buttons, a list by trade.
            "service" => self.press_thing(|name| name == value),
            "Window well" => {
                self.press_in(pane, |name| name == field);
            }
            "Net clear" => self.press_in(pane, |name| name == "Net clear: from the sheet"),
            _ => {
                let thing = self.thing(|t| pane.holds(t) && t.name == field && t.role != "Label");
                let (x, y) = thing.middle();
                self.click(x, y);
                if thing.role == "ComboBox" || thing.role == "Button" {
                    let offered = |t: &Thing| t.role == "Button" && t.name == value;
                    if thing.role == "ComboBox" && !self.comes(offered) {
                        // On a busy machine the field may have moved between the look and the click.
                        let thing =
                            self.thing(|t| pane.holds(t) && t.name == field && t.role != "Label");
                        let (x, y) = thing.middle();
                        self.click(x, y);
                    }
                    self.press_thing(|name| name == value);
                } else {
                    self.key("ctrl+a", 1);
                    self.typed(value);
                    self.key("Return", 1);
                }
            }
        }
    }

    fn press_in(&mut self, pane: Pane, is: impl Fn(&str) -> bool) {
        let (x, y) = self.thing(|t| pane.holds(t) && is(&t.name)).middle();
        self.click(x, y);
    }

    /// Clicks the button with a name.
    pub fn press_thing(&mut self, is: impl Fn(&str) -> bool) {
        let pressable = ["Button", "CheckBox", "MenuItem", "RadioButton"];
        let thing = self.thing(|t| pressable.contains(&t.role.as_str()) && is(&t.name));
        let (x, y) = thing.middle();
        self.click(x, y);
    }

    pub fn wait_for(&mut self, part: &str) {
        self.thing(|t| t.name.contains(part));
    }

    pub fn wait(&mut self, what: &str, mut is: impl FnMut() -> bool) {
        let began = Instant::now();
        while !is() {
            assert!(began.elapsed() < PATIENCE, "{}: {what} does not come true", self.place);
            sleep(Duration::from_millis(50));
        }
    }

    /// Waits until nothing is said any more; panics with what was said last.
    pub fn wait_or_say(&mut self, what: &str, mut says: impl FnMut() -> String) {
        let began = Instant::now();
        loop {
            let said = says();
            if said.is_empty() {
                return;
            }
            assert!(
                began.elapsed() < PATIENCE,
                "{}: {what} does not come true\n{said}",
                self.place
            );
            sleep(Duration::from_millis(50));
        }
    }

    /// Whether something that fits is on the screen within three seconds.
    fn comes(&self, fits: impl Fn(&Thing) -> bool) -> bool {
        let began = Instant::now();
        while began.elapsed() < Duration::from_secs(3) {
            if self.things().iter().any(&fits) {
                return true;
            }
            sleep(Duration::from_millis(50));
        }
        false
    }

    /// The first thing on the screen that fits.
    fn thing(&self, fits: impl Fn(&Thing) -> bool) -> Thing {
        let began = Instant::now();
        loop {
            let things = self.things();
            if let Some(thing) = things.into_iter().find(|t| fits(t)) {
                return thing;
            }
            if began.elapsed() > PATIENCE {
                let names: Vec<String> =
                    self.things().into_iter().map(|t| format!("{} {}", t.role, t.name)).collect();
                panic!("{}: not on the screen, which shows\n{}", self.place, names.join("\n"));
            }
            sleep(Duration::from_millis(50));
        }
    }

    fn told(&self) -> Option<Value> {
        serde_json::from_str(&fs::read_to_string(&self.tell).ok()?).ok()
    }

    fn things(&self) -> Vec<Thing> {
        let told = self.told().unwrap_or_default();
        let things = told["things"].as_array().cloned().unwrap_or_default();
        things.iter().map(Thing::read).collect()
    }

    /// Moves the pointer to a point of the plan, such as `10', 0`.
    fn point_at(&mut self, point: &str) {
        let inches = |text: &str| {
            measure::read_len(text.trim(), measure::BareUnit::Inches).expect("a length").to_inches()
        };
        let (x, y) = point.split_once(',').expect("x, y");
        let plan = self.thing(|t| t.role == "Canvas").rect;
        let began = Instant::now();
        loop {
            let told = self.told().expect("what is on the screen");
            let number = |v: &Value| v.as_f64().expect("a number");
            let (x0, y0) = (number(&told["origin"][0]), number(&told["origin"][1]));
            let scale = number(&told["per_inch"]);
            let (x, y) = (x0 + inches(x) * scale, y0 - inches(y) * scale);
            if plan[0] + 40.0 < x && x < plan[2] - 20.0 && plan[1] + 40.0 < y && y < plan[3] - 20.0
            {
                self.mouse(x, y);
                return self.settle();
            }
            assert!(began.elapsed() < PATIENCE, "{}: not in view at {x}, {y}", self.place);
            self.key("ctrl+minus", 1);
        }
    }

    fn mouse(&self, x: f64, y: f64) {
        self.desk.act(&["mousemove", &x.round().to_string(), &y.round().to_string()]);
    }

    fn click(&mut self, x: f64, y: f64) {
        self.mouse(x, y);
        self.settle();
        self.desk.act(&["click", "1"]);
        self.settle();
    }

    fn typed(&mut self, text: &str) {
        self.desk.act(&["type", "--delay", "15", text]);
        self.settle();
    }

    pub fn key(&mut self, key: &str, times: usize) {
        self.desk.act(&["key", "--repeat", &times.to_string(), "--repeat-delay", "40", key]);
        self.settle();
    }

    /// A person is slower than this.
    fn settle(&self) {
        sleep(Duration::from_millis(120));
    }

    pub fn kill(&mut self) {
        let _ = self.program.kill();
        let _ = self.program.wait();
    }

    /// Waits until the program has ended by itself.
    pub fn ends(mut self) {
        let began = Instant::now();
        while self.program.try_wait().expect("the program's state").is_none() {
            assert!(began.elapsed() < PATIENCE, "the window does not close");
            sleep(Duration::from_millis(50));
        }
    }
}

/// Something named on the screen.
#[derive(Clone, Debug)]
struct Thing {
    role: String,
    name: String,
    rect: [f64; 4],
}

impl Thing {
    fn read(value: &Value) -> Thing {
        let text = |v: &Value| v.as_str().unwrap_or_default().to_owned();
        let edge = |i: usize| value["rect"][i].as_f64().unwrap_or_default();
        Thing {
            role: text(&value["role"]),
            name: text(&value["name"]),
            rect: [edge(0), edge(1), edge(2), edge(3)],
        }
    }

    fn middle(&self) -> (f64, f64) {
        ((self.rect[0] + self.rect[2]) / 2.0, (self.rect[1] + self.rect[3]) / 2.0)
    }
}

/// Which side of the window a field is on.
#[derive(Clone, Copy)]
enum Pane {
    Kit,
    Inspector,
}

impl Pane {
    fn holds(self, thing: &Thing) -> bool {
        match self {
            Pane::Kit => thing.rect[2] < 400.0,
            Pane::Inspector => thing.rect[0] > 1100.0,
        }
    }
}

/// The folder that the tests' own program lies in holds the product too.
fn target() -> PathBuf {
    let own = std::env::current_exe().expect("a path");
    own.parent().and_then(Path::parent).expect("target/debug").to_owned()
}

fn tool_word(tool: &str) -> &str {
    match tool {
        "shell" => "Foundation wall",
        "stair" => "Stair",
        "column" => "Column",
        "overhead" => "Overhead",
        "window" => "Window",
        "service" => "Service point",
        "partition" => "Partition",
        "door" => "Door",
        "room" => "Room use",
        "select" => "Select",
        _ => panic!("tool {tool}"),
    }
}

fn key_word(key: &str) -> &str {
    match key {
        "escape" => "Escape",
        "enter" => "Return",
        _ => panic!("key {key}"),
    }
}

/// The field on the screen and the value to put in, of an option or a figure of the rehearse language.
fn field_of(text: &str) -> (&str, &str) {
    let (key, value) = text.split_once(' ').expect("a key and a value");
    let field = match key {
        "overhead" => "Kind",
        "overhead-width" => "Width",
        "overhead-underside" => "Underside",
        "window-width" | "width" => "Frame width",
        "window-height" | "height" => "Frame height",
        "window-sill" => "Sill",
        "window-grade" => "Outside grade",
        "window-well" => "Window well",
        "window-well-width" => "Well width",
        "window-well-projection" => "Well projection",
        "window-well-depth" => "Well depth",
        "operation" => "Opens as",
        "clear" => "Net clear",
        "clear-width" => "Net width",
        "clear-height" => "Net height",
        "service" => "service",
        "door-width" => "Leaf width",
        "door-operation" => "Kind",
        "room-use" | "use" => "Use",
        "room-name" => "Name",
        _ => panic!("no field for {key}"),
    };
    (field, value)
}
