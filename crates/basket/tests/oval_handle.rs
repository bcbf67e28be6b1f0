//! Ears and handle on walls that are not round, against an independent sampling of the same outlines.

#[path = "rim_bench/mod.rs"]
mod rim_bench;

use basket::fittings::{Ears, Fold, SwingHandle};
use basket::pattern::EarAxis;
use basket::stock::Catalogue;
use basket::{Basket, Hand};
use rim_bench::close;

/// A basket over an upright ellipse of 300 by 200 mm.
fn basket(count: u32, more: &str) -> Basket {
    let text = format!(
        "title = \"Oval\"\nunits = \"mm\"\n[mould]\nshape = \"oval\"\nlength = \"300\"\nwidth = \"200\"\n\
         rim = \"300\"\nheight = \"120\"\n[staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n\
         [handle]\n{more}\n"
    );
    let pattern = basket::pattern::read(&text, Catalogue::built_in()).expect("the pattern reads");
    basket::assemble(&pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn ears(basket: &Basket) -> &Ears {
    basket.ears.as_ref().expect("it has ears")
}

fn swing(basket: &Basket) -> &SwingHandle {
    basket.swing().expect("it has a handle that swings")
}

/// The ellipse of the foot has its half axes at 150 and 100 mm; the line on which the ears stand lies an even
/// way outside it, so that at the ends of both axes it lies just so much farther out.
#[test]
fn handle_spans_the_axis() {
    for (axis, half) in [("long", 150.0), ("short", 100.0)] {
        let basket = basket(64, &format!("kind = \"swing\"\njoint = \"slot\"\n[ears]\naxis = \"{axis}\""));
        let body = &basket.body;
        let stands = body.uprights().standing.at(body.rim().along);
        let out = stands + body.uprights().thickness / 2.0;
        close(swing(&basket).bow.half_span.to_mm(), half + out.to_mm(), 1e-6);
        close(ears(&basket).off_middle.to_mm(), 0.0, 1e-9);
        close(ears(&basket).off_opposite.to_degrees(), 0.0, 1e-9);
    }
}

/// Ears stand where the axis ends, as shares of the girth: 0 and 1/2, 1/4 and 3/4. On 65 staves none stands there but
/// the first: at the ends the second is half a pitch off, on the sides both are a quarter of one.
#[test]
fn odd_count_says_its_error() {
    let [long, short] = ["long", "short"].map(|axis| basket(65, &format!("[ears]\naxis = \"{axis}\"")));
    let pitch = long.body.rim().girth.to_mm() / 65.0;
    let off = |basket: &Basket| ears(basket).each.map(|ear| ear.off_axis.to_mm());
    let [first, second] = off(&long);
    close(first, 0.0, 1e-9);
    close(second, pitch / 2.0, 1e-9);
    let [first, second] = off(&short);
    close(first.abs(), pitch / 4.0, 1e-9);
    close(second, -first, 1e-9);
    for basket in [&long, &short] {
        close(ears(basket).off_opposite_rim.to_mm(), pitch / 2.0, 1e-9);
        assert!(ears(basket).off_opposite.to_degrees() > 0.5, "{:?}", ears(basket).off_opposite);
        assert!(ears(basket).off_middle.to_mm() > 0.5, "{:?}", ears(basket).off_middle);
    }
    // On the sides both lie off to the same end, so that the handle stands square but a quarter pitch from the middle.
    close(ears(&short).off_middle.to_mm(), pitch / 4.0, 0.1);
}

/// The place on an ellipse nearest to another, found by trying its angles ever finer: how far that lies outside.
fn outside([x, y]: [f64; 2]) -> f64 {
    let way = |angle: f64| (x - 150.0 * angle.cos()).hypot(y - 100.0 * angle.sin());
    let (mut best, mut step) = (0.0, 0.01);
    let mut from = 0.0;
    let mut to = std::f64::consts::TAU;
    for _ in 0..4 {
        let mut angle = from;
        while angle <= to {
            if way(angle) < way(best) {
                best = angle;
            }
            angle += step;
        }
        (from, to, step) = (best - step, best + step, step / 50.0);
    }
    let inside = (x / 150.0).hypot(y / 100.0) < 1.0;
    way(best) * if inside { -1.0 } else { 1.0 }
}

/// The half ellipse from end to end goes down outside the long sides. It comes to rest where its inner edge meets the
/// lashed rim or the wall: the same angle is found by letting points of its edges down degree by degree against
/// distances from the ellipse that are searched for, not computed. Wall and rim are upright, so that only how far out
/// they lie counts, and how deep below the pivots their top is.
#[test]
fn handle_folds_as_sampled() {
    let basket = basket(64, "curve = \"half-ellipse\"\nrise = \"170\"\njoint = \"slot\"");
    let (handle, ears) = (swing(&basket), ears(&basket));
    assert_eq!(ears.axis, Some(EarAxis::Long));
    let found = match handle.fold {
        Fold::OnWall { below_level, .. } => below_level.to_degrees(),
        Fold::OnRim { above_level } => -above_level.to_degrees(),
    };
    let (bow, body) = (&handle.bow, &basket.body);
    let stands = body.uprights().standing.at(body.rim().along).to_mm();
    let section = basket::lashing::RimSection::of(body.rim(), body.filler(), 64);
    let lash = body.lashing().map_or(0.0, |lashing| lashing.thickness().to_mm());
    let hull = section.hull().grown(basket::Length::mm(lash));
    // Corners of the lashed rim: how far outside the ellipse, how deep below the pivots.
    let deep = |up: f64| body.rim().height.to_mm() + ears.hole_height.to_mm() - up;
    let rim: Vec<[f64; 2]> =
        hull.corners().iter().map(|(out, up)| [stands + out.to_mm(), deep(up.to_mm())]).collect();
    let inside_rim = |at: [f64; 2]| {
        let sides = rim.iter().zip(rim.iter().cycle().skip(1));
        let cross = |[a, b]: [f64; 2], [c, d]: [f64; 2]| (c - a) * (at[1] - b) - (d - b) * (at[0] - a);
        let signs: Vec<f64> = sides.map(|(from, to)| cross(*from, *to)).collect();
        signs.iter().all(|sign| *sign > 0.0) || signs.iter().all(|sign| *sign < 0.0)
    };
    let (wide, thick) = (bow.width.to_mm() / 2.0, bow.thickness.to_mm() / 2.0);
    let (a, b) = (bow.half_span.to_mm(), bow.rise.to_mm());
    let points: Vec<[f64; 3]> = (1..=180)
        .flat_map(|step| {
            let angle = std::f64::consts::FRAC_PI_2 * f64::from(step) / 180.0;
            let normal = (angle.cos() / a).hypot(angle.sin() / b);
            let out = [angle.cos() / a / normal, angle.sin() / b / normal];
            let edges = [-1.0, -0.5, 0.0, 0.5, 1.0];
            edges
                .map(|side| [a * angle.cos() - out[0] * thick, b * angle.sin() - out[1] * thick, side * wide])
        })
        .collect();
    let beside = ears.width.to_mm() / 2.0;
    let touches = |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        points.iter().any(|[along, above, before]| {
            let (aside, below) = (above * cos - before * sin, above * sin + before * cos);
            aside.abs() > beside && {
                let off = outside([*along, aside]);
                let wall = below > deep(0.0) && off < stands + body.uprights().thickness.to_mm() && off > 0.0;
                wall || inside_rim([off, below])
            }
        })
    };
    let mut degrees = -60.0;
    while degrees < 90.0 && !touches(degrees) {
        degrees += if touches(degrees + 2.0) || degrees > found - 3.0 { 0.1 } else { 2.0 };
    }
    println!("sampled {degrees:.2}, found {found:.2}: {:?}", handle.fold);
    close(found, degrees, 0.2);
    // It rests somewhere beside the middle or at it: never farther round than a quarter of the rim.
    assert!(handle.rests.to_mm() <= body.rim().girth.to_mm() / 4.0 + 5.0, "{:?}", handle.rests);
}

/// A handle fixed across the middle is as wide as the basket there.
#[test]
fn fixed_handle_stands_across() {
    let basket = basket(64, "kind = \"fixed\"");
    let fixed = basket.handle.as_ref().and_then(|handle| handle.fixed()).expect("it is fixed");
    assert_eq!(fixed.ends.axis, Some(EarAxis::Short));
    let out =
        basket.body.uprights().standing.at(basket.body.rim().along) + basket.body.uprights().thickness / 2.0;
    close(fixed.bow.half_span.to_mm(), 100.0 + out.to_mm(), 1e-6);
}

/// A round mould has no axis to choose.
#[test]
fn axis_wants_an_outline() {
    let text = "title = \"T\"\nunits = \"in\"\nmould = { base = \"5\", rim = \"8\", height = \"4\" }\n\
                handle = { kind = \"swing\" }\nears = { axis = \"short\" }\n";
    let problems = basket::pattern::read(text, Catalogue::built_in()).expect_err("it is round");
    assert_eq!(problems.len(), 1, "{problems:?}");
    assert!(
        problems[0].to_string().contains("`ears.axis` belongs to a mould that is not round"),
        "{problems:?}"
    );
}

/// With ears in the middle of the long sides, half way between them would be the tight ends: there a lap opens first.
/// Each scarf lies beside an ear and wholly on one side, clear of the ear, and the hoops' scarfs face each other.
#[test]
fn scarfs_keep_off_the_tight_ends() {
    for count in [64, 65] {
        let basket = basket(count, "kind = \"swing\"\n[ears]\naxis = \"short\"");
        let rim = basket.body.rim();
        let scarfs = [rim.outer.scarf, rim.inner.scarf];
        for scarf in scarfs {
            let half = scarf.lap / rim.girth / 2.0;
            // The ends of the long axis lie at 0 and a half; no place of the lap is nearer to them than 0.09.
            for turn in [scarf.turn - half, scarf.turn, scarf.turn + half] {
                let off = (turn * 2.0).rem_euclid(1.0) / 2.0;
                assert!(off.min(0.5 - off) > 0.09, "{count}: {turn}");
            }
            close(scarf.clear_of_ear.expect("it has ears").to_mm(), 12.7, 1e-6);
        }
        // As near to facing each other as the ears are.
        let off = (scarfs[1].turn - scarfs[0].turn).rem_euclid(1.0) - 0.5;
        close(off, 0.0, if count % 2 == 0 { 1e-12 } else { 0.5 / f64::from(count) + 1e-12 });
    }
    let long = basket(64, "kind = \"swing\"\n[ears]\naxis = \"long\"");
    close(long.body.rim().outer.scarf.turn, 0.25, 1e-9);
}
