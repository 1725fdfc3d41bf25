//! The PDF and the SVG of a sheet are one picture, by two renderers that share no code with our writers: `hayro` reads
//! the PDF, `resvg` the SVG (both from the registry). Compared are means of small squares, as type is drawn with
//! different edges by each.

use std::sync::Arc;

use drawing::{Mark, Marks, Palette, Tone};
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::{PixmapSettings, RenderCache, RenderSettings};
use print::{Info, Page};
use rules::Book;
use sheets::{Options, Set, Source};

/// Dots per inch.
const DOTS: f32 = 144.0;
/// Dots along the side of a square whose mean is compared.
const SQUARE: usize = 16;
/// The most that two means may differ, of 255: a square that one has and the other lacks a word in differs more.
const APART: f32 = 40.0;

/// A grey picture.
struct Grey {
    width: usize,
    height: usize,
    dots: Vec<f32>,
}

impl Grey {
    fn of(width: usize, height: usize, rgb: impl Iterator<Item = [u8; 3]>) -> Grey {
        let dots: Vec<f32> = rgb
            .map(|[r, g, b]| f32::from(r).mul_add(0.3, f32::from(g) * 0.59) + f32::from(b) * 0.11)
            .collect();
        assert_eq!(dots.len(), width * height);
        Grey { width, height, dots }
    }

    fn mean(&self, x: usize, y: usize) -> f32 {
        let rows = (y..(y + SQUARE).min(self.height)).flat_map(|y| {
            (x..(x + SQUARE).min(self.width)).map(move |x| self.dots[y * self.width + x])
        });
        let (sum, n) = rows.fold((0.0, 0.0), |(sum, n), dot| (sum + dot, n + 1.0));
        sum / n
    }

    /// The largest difference of two means, and where.
    fn apart(&self, other: &Grey) -> (f32, usize, usize) {
        assert_eq!((self.width, self.height), (other.width, other.height));
        let all = (0..self.height).step_by(SQUARE).flat_map(|y| {
            (0..self.width)
                .step_by(SQUARE)
                .map(move |x| ((self.mean(x, y) - other.mean(x, y)).abs(), x, y))
        });
        all.fold((0.0, 0, 0), |most, one| if one.0 > most.0 { one } else { most })
    }

    /// Whether anything is drawn.
    fn ink(&self) -> bool {
        self.dots.iter().any(|dot| *dot < 128.0)
    }
}

fn from_pdf(marks: &Marks, size: (f32, f32)) -> Grey {
    let page = Page { size, marks };
    let bytes = print::pdf(&[page], &Info::default(), Palette::Print, &mut |_| ()).expect("a PDF");
    let pdf = Pdf::new(bytes).expect("it can be read");
    let page = &pdf.pages()[0];
    let settings = PixmapSettings {
        x_scale: DOTS / 72.0,
        y_scale: DOTS / 72.0,
        bg_color: hayro::vello_cpu::color::palette::css::WHITE,
    };
    let picture = hayro::render(
        page,
        &RenderCache::new(),
        &InterpreterSettings::default(),
        &RenderSettings { hinting: false, ..RenderSettings::default() },
        &settings,
    );
    let (width, height) = (usize::from(picture.width()), usize::from(picture.height()));
    Grey::of(width, height, picture.data().iter().map(|p| [p.r, p.g, p.b]))
}

fn from_svg(marks: &Marks, size: (f32, f32)) -> Grey {
    let bytes = print::png(&Page { size, marks }, Palette::Print, DOTS).expect("a picture");
    let mut reader = png::Decoder::new(std::io::Cursor::new(bytes)).read_info().expect("a picture");
    let mut dots = vec![0; reader.output_buffer_size().expect("a size")];
    let info = reader.next_frame(&mut dots).expect("its dots");
    let rgb = dots.as_chunks::<3>().0.iter().copied();
    Grey::of(info.width as usize, info.height as usize, rgb)
}

fn set() -> Set {
    let plan =
        whole::demo::all().into_iter().find(|(n, _)| n.contains("passes")).expect("a demo").1;
    let facts = space::derive(&Arc::new(plan));
    let book = Book::of(&facts.plan.site);
    let findings = rules::check(&facts, &book);
    let source = Source { facts: &facts, findings: &findings, book: &book };
    sheets::set(&source, &Options::default())
}

#[test]
fn pdf_and_svg_look_the_same() {
    let set = set();
    assert!(set.sheets.len() > 8);
    for sheet in &set.sheets {
        let (pdf, svg) = (from_pdf(&sheet.marks, sheet.size), from_svg(&sheet.marks, sheet.size));
        assert!(pdf.ink() && svg.ink(), "{} is blank", sheet.number);
        let (most, x, y) = pdf.apart(&svg);
        assert!(most <= APART, "{}: {most} of 255 apart at {x}, {y}", sheet.number);
    }
}

/// The comparison sees a word that is missing, and a wall that is an inch off.
#[test]
fn what_is_not_the_same_is_seen() {
    let set = set();
    let sheet = set.sheets.iter().find(|s| s.kind == "proposed-plan").expect("a plan");
    let pdf = from_pdf(&sheet.marks, sheet.size);
    let word = |mark: &Mark| matches!(mark, Mark::Text(t) if t.text == "Bedroom");
    let mut without = sheet.marks.clone();
    without.0.retain(|mark| !word(mark));
    assert_eq!(without.0.len() + 1, sheet.marks.0.len());
    assert!(pdf.apart(&from_svg(&without, sheet.size)).0 > APART);
    let mut moved = sheet.marks.clone();
    let wall = moved.0.iter_mut().find_map(|mark| match mark {
        Mark::Fill { rings, tone: Tone::Shell, .. } => Some(rings),
        _ => None,
    });
    for p in wall.expect("a wall").iter_mut().flatten() {
        p.x += 72.0;
    }
    assert!(pdf.apart(&from_svg(&moved, sheet.size)).0 > APART);
}
