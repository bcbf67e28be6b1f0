//! The mould by itself, and baskets over moulds that are not round; files read by independent readers.

mod common;

use std::collections::BTreeMap;
use std::f64::consts::{PI, TAU};
use std::io::Cursor;

use basket::form::Outline as _;
use basket::steps::Stage;
use basket::{Basket, Length, Of, Piece};
use common::solids::{assert_sound, of_kind, volume};
use common::{HARBOUR, basket, words};
use drawings::solid::{Detail, mould_solid, solid, stl, three_mf};
use drawings::{board_outlines, outlines_dxf, outlines_svg, spacing_strip, turning_templates};

const PILOT: &str = include_str!("../../../patterns/pilot-letter-basket.toml");
const BOX: &str = "title = \"Box\"\nunits = \"mm\"\n[mould]\nshape = \"rectangle\"\nlength = \"260\"\nwidth = \"180\"\n\
                   corner = \"60\"\nrim = \"270\"\nheight = \"90\"\n";
const TRACED: &str = "title = \"Egg\"\nunits = \"mm\"\n[mould]\nshape = \"traced\"\nrim = \"235\"\nheight = \"90\"\n\
                      rays = [\"120\", \"112\", \"98\", \"88\", \"84\", \"88\", \"98\", \"104\", \"106\", \"104\", \"98\", \
                      \"88\", \"84\", \"88\", \"98\", \"112\"]\n";

/// Sides of the screw hole.
const HOLE_SIDES: f64 = 48.0;

/// The volume of a mould as a polygon of so many sides at every level has it, less its hole. A regular polygon of
/// `n` sides has `n/2π·sin(2π/n)` of its circle (plane geometry); one whose corners lie at equal ways on another
/// curve lacks as much where that bends as much.
fn solid_volume(basket: &Basket, sides: f64) -> f64 {
    let form = &basket.body.form;
    let hole = basket.body.base().screw_hole.to_mm() / 2.0;
    let factor = |sides: f64| sides / TAU * (TAU / sides).sin();
    form.litres() * 1e6 * factor(sides) - PI * hole * hole * form.height().to_mm() * factor(HOLE_SIDES)
}

#[test]
fn a_mould_is_watertight_and_has_its_volume() {
    for pattern in [HARBOUR, PILOT, BOX, TRACED] {
        let basket = basket(pattern);
        let solid = mould_solid(&basket, Detail::Full);
        assert_sound(&solid);
        let mesh = &solid.parts[0].mesh;
        let lowest = mesh.positions.iter().filter(|at| at[2].abs() < 1e-3).count();
        // The foot's own ring and that of the hole.
        let sides = lowest as f64 - HOLE_SIDES;
        let (found, wanted) = (volume(mesh), solid_volume(&basket, sides));
        let allowed = if basket.body.form.outline.is_round() { 2e-5 } else { 3e-4 };
        assert!((found / wanted - 1.0).abs() < allowed, "{found} for {wanted} with {sides} sides");
    }
}

#[test]
fn stl_and_three_mf_of_a_mould_are_read() {
    let basket = basket(PILOT);
    let solid = mould_solid(&basket, Detail::Full);
    let mesh = stl_io::read_stl(&mut Cursor::new(stl(&solid))).expect("a sound STL");
    assert!(mesh.validate().is_ok());
    let long = mesh.vertices.iter().map(|at| f64::from(at[0])).fold(f64::NEG_INFINITY, f64::max);
    let [across, width] = {
        let across = basket.body.form.across(basket.body.form.arc(), Length::ZERO);
        [across.length.to_mm(), across.width.to_mm()]
    };
    assert!((long - across / 2.0).abs() < 1e-3, "{long}");
    let models = threemf::read(Cursor::new(three_mf(&solid).expect("a 3MF"))).expect("a sound 3MF");
    let vertices: Vec<_> = models
        .iter()
        .flat_map(|model| &model.resources.object)
        .filter_map(|object| object.mesh.as_ref())
        .flat_map(|mesh| &mesh.vertices.vertex)
        .collect();
    assert_eq!(vertices.len(), solid.parts[0].mesh.positions.len());
    let wide = vertices.iter().map(|at| at.y).fold(f64::NEG_INFINITY, f64::max);
    assert!((wide - width / 2.0).abs() < 1e-2, "{wide} for {width}");
}

#[test]
fn dxf_is_read_with_every_outline_closed_and_as_long_as_it_is() {
    for pattern in [HARBOUR, PILOT] {
        let basket = basket(pattern);
        let layers = basket.body.form.layers(Length::inches(0.75));
        let file = outlines_dxf(&basket, &layers);
        let drawing = dxf::Drawing::load(&mut Cursor::new(file)).expect("a sound DXF");
        let mut girths = BTreeMap::new();
        for entity in drawing.entities() {
            let dxf::entities::EntityType::Polyline(line) = &entity.specific else { panic!("{entity:?}") };
            assert!(line.is_closed());
            let at: Vec<[f64; 2]> = line.vertices().map(|at| [at.location.x, at.location.y]).collect();
            let sides = (0..at.len()).map(|corner| {
                let [from, to] = [at[corner], at[(corner + 1) % at.len()]];
                (from[0] - to[0]).hypot(from[1] - to[1])
            });
            girths.insert(entity.common.layer.clone(), sides.sum::<f64>());
        }
        let close = |name: &str, radius: Length| {
            let found = girths[name];
            let wanted = TAU * radius.to_mm();
            assert!((found / wanted - 1.0).abs() < 1e-3, "{name}: {found} for {wanted}");
        };
        close("BASE", basket.body.base().edge_radius());
        close("BASE_GROOVE", basket.body.base().groove_radius());
        let rim = basket.body.rim();
        // Each hoop is bent round its own inside.
        close("HOOP_OUTER_FORM", rim.radius() + basket.body.uprights().thickness);
        close("HOOP_INNER_FORM", rim.radius() - rim.inner.stock.thickness);
        if let Some(bow) = basket.bow() {
            // Half of its thickness inside the neutral line that is turned by half a round: shorter by π/2 of it.
            let bail = bow.bail().expect("a curve");
            let inside = bail.length().to_mm() - PI * bow.thickness.to_mm() / 2.0;
            let across = 2.0 * (bail.half_span() - bow.thickness / 2.0).to_mm();
            let found = girths["HANDLE_FORM"];
            assert!((found / (inside + across + 60.0) - 1.0).abs() < 2e-3, "{found}");
            assert!(girths.contains_key("EAR"));
        }
        let svg = outlines_svg(&basket, &layers);
        let tree = resvg::usvg::Tree::from_str(&svg, &resvg::usvg::Options::default()).expect("a sound SVG");
        assert!(girths.keys().all(|name| tree.node_by_id(name).is_some()), "an outline is not in the SVG");
        assert_eq!(svg.matches("<path").count(), girths.len(), "each outline is there once");
        for layer in &layers {
            close(&format!("BOARD_{}", layer.number), layer.faces[0].max(layer.faces[1]));
            close(&format!("BOARD_{}_BLANK", layer.number), layer.blank);
        }
    }
}

#[test]
fn boards_hold_the_mould_and_lie_on_each_other() {
    for pattern in [HARBOUR, PILOT, BOX] {
        let form = &basket(pattern).body.form;
        let layers = form.layers(Length::inches(0.5));
        assert_eq!(layers[0].from, Length::ZERO);
        assert!((layers.last().unwrap().to - form.height()).abs().to_mm() < 1e-9);
        assert_eq!(layers[0].hole, None, "the screw needs wood");
        for pair in layers.windows(2) {
            assert_eq!(pair[0].to, pair[1].from);
            if let Some(hole) = pair[1].hole {
                let least = pair[0].faces[0].min(pair[0].faces[1]);
                assert!((least - hole).to_inches() > 1.0, "no wood is left to glue");
            }
        }
        for layer in &layers {
            assert!(layer.faces.iter().all(|face| layer.blank > *face));
        }
    }
}

#[test]
fn an_oval_basket_is_closed_at_every_stage() {
    for pattern in [PILOT, BOX, TRACED] {
        let basket = basket(pattern);
        for stage in Stage::ALL {
            let solid = solid(&basket, stage, Detail::Page);
            assert!(
                solid.parts.iter().all(|part| part.turned.is_none()),
                "no two parts are turned into each other"
            );
            assert_sound(&solid);
        }
    }
}

/// Staves keep their width round the tight ends and along the sides, and stand at equal ways on the foot.
#[test]
fn staves_of_an_oval_keep_their_width_and_stand_evenly() {
    let basket = basket(PILOT);
    let solid = solid(&basket, Stage::StavesSet, Detail::Full);
    let foot = &basket.body.form.outline;
    let width = basket.body.uprights().width.to_mm();
    for (index, part) in of_kind(&solid, Piece::Uprights).enumerate() {
        let top = part.mesh.positions.iter().map(|at| at[2]).fold(f32::NEG_INFINITY, f32::max);
        let tip: Vec<[f64; 2]> = part
            .mesh
            .positions
            .iter()
            .filter(|at| top - at[2] < 0.01)
            .map(|at| [f64::from(at[0]), f64::from(at[1])])
            .collect();
        let apart = |a: &[f64; 2], b: &[f64; 2]| (a[0] - b[0]).hypot(a[1] - b[1]);
        let widest = tip.iter().flat_map(|a| tip.iter().map(move |b| apart(a, b))).fold(0.0, f64::max);
        assert!((widest - width).abs() < 0.12, "stave {}: {widest} for {width}", index + 1);
        // The tip lies on the normal of the stave's own place on the foot; numbers rise clockwise from above.
        let at = foot.at(-(index as f64) / f64::from(basket.body.uprights().count));
        let middle = [0, 1].map(|axis| tip.iter().map(|at| at[axis]).sum::<f64>() / tip.len() as f64);
        let off = [middle[0] - at.point[0], middle[1] - at.point[1]];
        let aside = off[0] * at.outward[1] - off[1] * at.outward[0];
        assert!(aside.abs() < 0.1, "stave {} leans by {aside} mm", index + 1);
    }
}

#[test]
fn templates_of_ovals_are_drawn() {
    let basket = basket(PILOT);
    let words = words(&basket);
    let card = turning_templates(&basket, &words).remove(0);
    let form = &basket.body.form;
    let widest = form.across(form.arc(), Length::ZERO).length.to_mm() / 2.0;
    assert!(card.width() > widest && card.height() > form.height().to_mm());
    let boards = board_outlines(&basket, &form.layers(Length::inches(0.75)), &words);
    assert!((boards.width() - 2.0 * widest).abs() < 6.0, "{}", boards.width());
    let carved = self::basket(&PILOT.replace("rim = ", "widths = [[\"4\", \"7\"]]\nrim = "));
    let [length, width] = turning_templates(&carved, &words).try_into().expect("a card for each side");
    // Each is as wide as half the mould there, 10 in by 7 in at the top, with its longest label.
    assert!(
        (length.width() - width.width() - 1.5 * 25.4).abs() < 4.0,
        "{} {}",
        length.width(),
        width.width()
    );
    let strip = spacing_strip(&basket, &words, drawings::At::Rim);
    assert!(strip.width() > drawings::rim_girth(&basket).to_mm());
}

/// The lid as it is measured: within the opening by its room, its top above the rim by what it rises. Pieces of it say
/// that they are the lid's, and there is none before the basket is finished.
#[test]
fn a_finished_basket_has_its_lid_on() {
    for fit in ["drop-in", "cap", "flush"] {
        let basket = basket(&format!("{PILOT}\nfit = \"{fit}\"\n"));
        let lid = basket.lid.as_ref().expect("the pattern has a lid");
        let solid = solid(&basket, Stage::Finished, Detail::Page);
        assert_sound(&solid);
        let of_lid = || solid.parts.iter().filter(|part| part.of == Of::Lid);
        // What it is lifted by, holds it and turns it stands beyond its own wall.
        let added = [Piece::Lift, Piece::Ledge, Piece::Collar, Piece::Hinge, Piece::Latch, Piece::Peg];
        let far = |at: &dyn Fn([f32; 3]) -> f32| {
            let own = of_lid().filter(|part| !added.contains(&part.piece));
            own.flat_map(|part| &part.mesh.positions).map(|place| at(*place)).fold(f32::MIN, f32::max)
        };
        let close = |found: f32, wanted: Length, allowed: f64| {
            assert!((f64::from(found) - wanted.to_mm()).abs() < allowed, "{fit}: {found} for {wanted:?}");
        };
        let rim = basket.body.rim();
        let top = basket.body.profile().at(rim.along + rim.height).height;
        close(far(&|at| at[2]), top + lid.rises, 0.01);
        // Wraps of the lashing stand a little off the hoops that they go round.
        close(far(&|at| at[0]), lid.across.length / 2.0, 0.5);
        assert!(of_lid().all(|part| part.name().starts_with("lid, ")));
        let before = drawings::solid::solid(&basket, Stage::Handled, Detail::Page);
        assert!(before.parts.iter().all(|part| part.of == Of::Body));
    }
}
