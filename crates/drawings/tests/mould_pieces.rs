//! The mould cut into pieces for a printer and pieces round a core: closed, as large as they may be, and together
//! the whole. Asked with the library of collision geometry of the other tests (the crate parry3d), and read back by
//! independent readers.

mod common;

use std::f64::consts::TAU;
use std::io::Cursor;

use basket::mould::{Apart, Axis, Room, Split, TooSmall};
use basket::{Basket, Length};
use common::solids::{assert_sound, volume};
use common::{HARBOUR, ODD, basket};
use drawings::solid::{Detail, Mesh, mould_pieces, mould_solid, stl, three_mf};
use parry3d::glamx::Vec3;
use parry3d::query::PointQuery;
use parry3d::shape::{TriMesh, TriMeshFlags};

const PILOT: &str = include_str!("../../../patterns/pilot-letter-basket.toml");
const BOX: &str = "title = \"Box\"\nunits = \"mm\"\n[mould]\nshape = \"rectangle\"\nlength = \"260\"\nwidth = \"180\"\n\
                   corner = \"60\"\nrim = \"270\"\nheight = \"90\"\n";
const TRACED: &str = "title = \"Egg\"\nunits = \"mm\"\n[mould]\nshape = \"traced\"\nrim = \"235\"\nheight = \"90\"\n\
                      rays = [\"120\", \"112\", \"98\", \"88\", \"84\", \"88\", \"98\", \"104\", \"106\", \"104\", \"98\", \
                      \"88\", \"84\", \"88\", \"98\", \"112\"]\n";
/// A wall that narrows by 16 mm in radius toward its rim.
const URN: &str = "title = \"Urn\"\nunits = \"mm\"\n[mould]\npieces = \"several\"\n\
                   girths = [[\"0\", \"560\"], [\"60\", \"760\"], [\"140\", \"660\"]]\n";
/// The same over an oval foot.
const OVAL_URN: &str = "title = \"Oval urn\"\nunits = \"mm\"\n[mould]\nshape = \"oval\"\nlength = \"220\"\nwidth = \"140\"\n\
                        pieces = \"several\"\ngirths = [[\"0\", \"572\"], [\"60\", \"760\"], [\"140\", \"680\"]]\n";

fn room(sides: [f64; 3]) -> Room {
    Room(sides.map(Length::mm))
}

fn size(mesh: &Mesh) -> [f64; 3] {
    [0, 1, 2].map(|axis| {
        let all = || mesh.positions.iter().map(|at| f64::from(at[axis]));
        all().fold(f64::NEG_INFINITY, f64::max) - all().fold(f64::INFINITY, f64::min)
    })
}

/// Volume of the holes of all pegs, as prisms of 48 sides.
fn holes(split: &Split) -> f64 {
    let radius = split.peg.hole.to_mm() / 2.0;
    let area = 24.0 * radius * radius * (TAU / 48.0).sin();
    2.0 * split.pegs.len() as f64 * area * split.peg.depth.to_mm()
}

fn body(mesh: &Mesh) -> TriMesh {
    let corners = mesh.positions.iter().map(|at| Vec3::from_array(*at)).collect();
    TriMesh::with_flags(corners, mesh.triangles.clone(), TriMeshFlags::ORIENTED).expect("a mesh")
}

/// How deep a place lies in a body; negative outside.
fn depth(body: &TriMesh, place: [f64; 3]) -> f32 {
    let place = Vec3::from_array(place.map(|side| side as f32));
    let nearest = body.project_local_point(place, false);
    let distance = (nearest.point - place).length();
    if nearest.is_inside { distance } else { -distance }
}

#[test]
fn pieces_are_closed_fit_the_printer_and_are_together_the_whole() {
    for pattern in [HARBOUR, PILOT, BOX, TRACED, ODD[1], ODD[2]] {
        let basket = basket(pattern);
        let whole = volume(&mould_solid(&basket, Detail::Full).parts[0].mesh);
        let large = if pattern == ODD[1] { 450.0 } else { 1.0 };
        for sides in [[200.0, 200.0, 250.0], [150.0, 110.0, 60.0], [120.0, 120.0, 120.0]] {
            let sides = sides.map(|side: f64| side.max(large));
            let split = Split::of(&basket, Some(room(sides)), None).expect("few pieces");
            let solid = mould_pieces(&basket, &split, Detail::Full);
            let solid = solid.unwrap_or_else(|| panic!("{} in {sides:?}", basket.title));
            assert_sound(&solid);
            assert_eq!(solid.parts.len(), split.parts.len());
            for (part, told) in solid.parts.iter().zip(split.parts.iter().map(|part| part.size)) {
                let [x, y, z] = size(&part.mesh);
                let fits = |a: f64, b: f64| x <= a && y <= b && z <= sides[2];
                let turned = fits(sides[1], sides[0]);
                assert!(fits(sides[0], sides[1]) || turned, "{}: {x} × {y} × {z} in {sides:?}", part.name());
                let told = told.map(Length::to_mm);
                let near = (x - told[0]).abs() < 0.3 && (y - told[1]).abs() < 0.3;
                let step = basket.body.form.height().to_mm() / 60.0;
                let high = (-0.3..=step).contains(&(told[2] - z));
                assert!(near && high, "{}: {x} × {y} × {z}, told {told:?}", part.name());
                let low = part.mesh.positions.iter().map(|at| at[2]).fold(f32::INFINITY, f32::min);
                assert!(low.abs() < 1e-4, "{} does not lie flat", part.name());
            }
            let parts: f64 = solid.parts.iter().map(|part| volume(&part.mesh)).sum();
            let off = (parts + holes(&split)) / whole - 1.0;
            assert!(off.abs() < 1e-5, "{}: {off}", basket.title);
            // The corners of the odd ones are too thin for a peg.
            let bare = if ODD.contains(&pattern) { split.bare } else { 0 };
            assert_eq!(split.bare, bare, "{}: joints without a peg in {sides:?}", basket.title);
        }
    }
}

/// A wall of 3 mm stays round each hole, and no two holes meet.
#[test]
fn no_peg_breaks_through() {
    for pattern in [HARBOUR, PILOT, TRACED] {
        let basket = basket(pattern);
        let whole = body(&mould_solid(&basket, Detail::Full).parts[0].mesh);
        let split = Split::of(&basket, Some(room([120.0, 110.0, 60.0])), None).expect("few pieces");
        assert!(split.pegs.len() > 8);
        let reach = split.peg.depth.to_mm();
        let ends = |axis: Axis, at: [f64; 3]| {
            [-1.0, -0.5, 0.0, 0.5, 1.0].map(|share| axis.put(at, axis.of(at) + share * reach))
        };
        for (index, peg) in split.pegs.iter().enumerate() {
            let at = peg.at.map(Length::to_mm);
            for place in ends(peg.axis, at) {
                let deep = depth(&whole, place) - split.peg.hole.to_mm() as f32 / 2.0;
                assert!(deep > 2.8, "{}: peg {index} keeps {deep} mm", basket.title);
            }
            // Both pieces take it whole: each begins or ends at the joint, and is thicker than the hole is deep.
            let [before, behind] =
                peg.joins.map(|piece| split.parts[piece].block.side(peg.axis).map(Length::to_mm));
            assert!((before[1] - peg.axis.of(at)).abs() < 1e-6 && (behind[0] - peg.axis.of(at)).abs() < 1e-6);
            assert!(before[1] - before[0] > reach && behind[1] - behind[0] > reach);
            for other in &split.pegs[index + 1..] {
                let others = ends(other.axis, other.at.map(Length::to_mm));
                let near = ends(peg.axis, at)
                    .iter()
                    .flat_map(|a| {
                        others.iter().map(move |b| {
                            ((a[0] - b[0]).powi(2) + (a[1] - b[1]).powi(2) + (a[2] - b[2]).powi(2)).sqrt()
                        })
                    })
                    .fold(f64::INFINITY, f64::min);
                assert!(near > split.peg.hole.to_mm(), "{}: two holes meet", basket.title);
            }
        }
    }
}

#[test]
fn pieces_are_read_one_by_one() {
    let basket = basket(PILOT);
    let split = Split::of(&basket, Some(room([200.0, 200.0, 200.0])), None).expect("few pieces");
    let solid = mould_pieces(&basket, &split, Detail::Full).expect("closed pieces");
    let models = threemf::read(Cursor::new(three_mf(&solid).expect("a 3MF"))).expect("a sound 3MF");
    let objects: Vec<_> = models.iter().flat_map(|model| &model.resources.object).collect();
    assert_eq!(objects.len(), split.parts.len());
    assert_eq!(objects[0].name.as_deref(), Some("mould part 1"));
    let mesh = stl_io::read_stl(&mut Cursor::new(stl(&solid))).expect("a sound STL");
    assert!(mesh.validate().is_ok());
    assert_eq!(mesh.faces.len(), solid.triangles());
}

#[test]
fn a_printer_that_is_too_small_is_told_how_many_pieces_it_would_take() {
    let basket = basket(HARBOUR);
    let small = Split::of(&basket, Some(room([30.0, 30.0, 30.0])), None);
    assert!(matches!(small, Err(TooSmall { pieces }) if pieces > 64), "{small:?}");
    let one = Split::of(&basket, Some(room([1000.0, 1000.0, 1000.0])), None).expect("one piece");
    assert_eq!((one.parts.len(), one.pegs.len()), (1, 0));
}

/// Moved in and up in small steps, no corner of a segment comes out of what lies inside the wall there: the mould
/// itself, for the weaving lies on it.
#[test]
fn segments_come_out() {
    for pattern in [URN, OVAL_URN] {
        let basket = basket(pattern);
        let form = &basket.body.form;
        let apart = Apart::of(&basket).expect("it comes apart");
        let split = Split::of(&basket, None, Some(&apart)).expect("few pieces");
        let solid = mould_pieces(&basket, &split, Detail::Full).expect("closed pieces");
        assert_sound(&solid);
        assert_eq!(split.parts.len(), apart.segments.len() + 1);
        let whole = volume(&mould_solid(&basket, Detail::Full).parts[0].mesh);
        let parts: f64 = solid.parts.iter().map(|part| volume(&part.mesh)).sum();
        assert!(parts < whole && parts > whole * 0.9, "{parts} of {whole}: the rest is kerf");
        let inside = body(&mould_solid(&basket, Detail::Full).parts[0].mesh);
        let top = form.height().to_mm();
        let rim = form.profile.at(basket.body.rim().along).height.to_mm().min(top);
        for segment in &apart.segments {
            let sides = [Axis::Length, Axis::Width].map(|axis| segment.block.side(axis).map(Length::to_mm));
            let moved = segment.moves.map(Length::to_mm);
            for up in 0..=24 {
                let from = rim * f64::from(up) / 24.0;
                for turn in 0..180 {
                    let along = form.profile.along_at_height(Length::mm(from));
                    let [x, y, _] =
                        form.at(along, f64::from(turn) / 180.0, Length::ZERO).point.map(Length::to_mm);
                    let own = [x, y].iter().zip(sides).all(|(at, [from, to])| (from..=to).contains(at));
                    let highest = (rim - 0.5 - from).max(0.0);
                    for lift in [0.0, 0.25, 0.5, 0.75, 1.0].map(|share| share * highest) {
                        let place = [x + moved[0], y + moved[1], (from + lift).max(0.5)];
                        // Whatever lies in the screw hole lies inside the wall.
                        if own && place[0].hypot(place[1]) > 20.0 {
                            let deep = depth(&inside, place);
                            assert!(deep > 0.0, "{}: {segment:?} at {place:?}: {deep}", basket.title);
                        }
                    }
                }
            }
        }
    }
}

/// A neck of a third of the belly lets nothing out but a core that is too thin to hold the screw.
#[test]
fn a_narrow_neck_lets_no_segment_out() {
    let flask = "title = \"Flask\"\nunits = \"mm\"\n[mould]\n\
                 girths = [[\"0\", \"560\"], [\"60\", \"760\"], [\"180\", \"200\"]]\n";
    assert!(Apart::of(&basket(flask)).is_err());
}

/// The most slender core that serves is the least that was ever asked for, or more: a segment has to move in by the
/// depth of the undercut at least.
#[test]
fn a_core_is_as_wide_as_the_undercut_asks() {
    for pattern in [URN, OVAL_URN] {
        let basket = basket(pattern);
        let apart = Apart::of(&basket).expect("it comes apart");
        let least = basket.body.form.mould().core().expect("in pieces");
        assert!(apart.core.iter().all(|core| *core >= least * 0.5), "{apart:?} for {least:?}");
        let keys = apart.segments.iter().filter(|segment| segment.key).count();
        assert!(keys == 2 || keys == 4);
        assert!(apart.segments.iter().all(|segment| segment.room.to_mm() > 1.5));
    }
    let lifts_off: Basket = basket(HARBOUR);
    assert!(Apart::of(&lifts_off).is_ok(), "what lifts off comes apart as well");
}
