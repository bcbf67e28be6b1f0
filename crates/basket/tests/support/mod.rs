//! Random patterns: every one that a file can say, from ordinary to absurd.

use basket::colour::{BUILT_IN, Colour};
use basket::pattern::Rule;
use basket::pattern::drawn::Drawn;
use basket::pattern::{
    AllReady, BailCurve, BasePattern, CaneFace, CoursePattern, Direction, EarAxis, EarMaterial, EarPlacing,
    EarWay, EarsPattern, Every, FillerPattern, Finish, FinishPart, FootSize, Girth, Handed, HandleJoint,
    HandleKind, HandleMade, HandlePattern, HoopWay, LashingPattern, LashingStyle, Lean, Levels, LidFit,
    LidLift, LidPattern, LidWay, MouldForm, MouldPattern, MouldPieces, Outline, OvalSide, PinsPattern, Ready,
    RimPattern, Rings, Side, Spacing, StavesPattern, TaperPattern, Units, Until, Way, WeaveKind,
    WeavePattern, WidthAt, Word,
};
use basket::stock::Kind;
use basket::{Catalogue, Length, Material, Pattern};
use proptest::option::of;
use proptest::prelude::*;
use proptest::sample::select;

/// Any pattern that a file can say.
pub(crate) fn any_pattern() -> BoxedStrategy<Pattern> {
    let wall = (any_mould(), any_base(), any_staves(), any_weave());
    let edge = (any_rim(), any_filler(), any_lashing(), any_pins());
    let hand = select(Handed::ALL.to_vec());
    let on_ears = (of(any_ears()), of(any_handle()), of(select(EarAxis::ALL.to_vec())));
    let fittings = (
        on_ears,
        (any_finish(), any_finish_on()),
        any_units(),
        any_ready(),
        (hand, proptest::option::weighted(0.03, any_lid())),
    );
    (wall, edge, fittings)
        .prop_map(|(wall, edge, fittings)| {
            let (mould, base, staves, weave) = wall;
            let (rim, filler, lashing, pins) = edge;
            let ((ears, handle, axis), (finish, finish_on), units, ready, (hand, lid)) = fittings;
            let round = mould.outline == Outline::Round;
            let ears = ears.map(|ears| EarsPattern { axis: axis.filter(|_| !round), ..ears });
            let handle = handle.map(|handle| {
                let fixed = handle.kind() == HandleKind::Fixed;
                HandlePattern { axis: axis.filter(|_| !round && fixed), ..handle }
            });
            let ears = ears.or_else(|| handle.as_ref().and_then(HandlePattern::ears));
            let title = "Any basket".to_owned();
            let materials = Vec::new();
            Pattern {
                title,
                units,
                language: None,
                level: None,
                mould,
                base,
                staves,
                weave,
                rim,
                filler,
                lashing,
                pins,
                ears,
                handle,
                lid,
                finish,
                finish_on,
                hand,
                signature: None,
                ready,
                notes: Vec::new(),
                sale: basket::pattern::Sale::default(),
                materials,
            }
        })
        .boxed()
}

/// From the smallest to the largest length that is read, ordinary ones most often.
fn length() -> BoxedStrategy<Length> {
    prop_oneof![
        20 => 1.0..400.0_f64,
        2 => 0.05..1.0_f64,
        1 => 400.0..5000.0_f64,
        1 => select(vec![0.05, 5000.0]),
    ]
    .prop_map(Length::mm)
    .boxed()
}

fn small() -> BoxedStrategy<Length> {
    prop_oneof![9 => (0.5..20.0_f64).prop_map(Length::mm), 1 => length()].boxed()
}

fn count() -> BoxedStrategy<u32> {
    prop_oneof![9 => 3_u32..=149, 1 => 3_u32..=999, 1 => select(vec![3, 999])].boxed()
}

/// Materials of these kinds, as sold or with any width and thickness.
fn stock(kinds: &'static [Kind]) -> BoxedStrategy<Material> {
    let known: Vec<Material> =
        Catalogue::built_in().materials.iter().filter(|one| kinds.contains(&one.kind)).cloned().collect();
    (select(known), proptest::option::weighted(0.2, (small(), small())))
        .prop_map(|(material, size)| match size {
            Some((width, thickness)) => Material { width, thickness, ..material },
            None => material,
        })
        .boxed()
}

const STRIPS: &[Kind] = &[
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];

fn any_mould() -> BoxedStrategy<MouldPattern> {
    let girths = (length(), prop::collection::vec((length(), length()), 1..12)).prop_map(|(foot, steps)| {
        let mut height = Length::ZERO;
        let mut girths = vec![Girth { height, girth: foot }];
        for (step, girth) in steps {
            height += step;
            if height < Length::mm(5000.0) {
                girths.push(Girth { height, girth });
            }
        }
        if girths.len() < 2 {
            girths.push(Girth { height: Length::mm(5000.0), girth: foot });
        }
        MouldForm::Girths(girths)
    });
    let drawn =
        (length(), length(), length(), select(vec![Side::Straight, Side::Cone, Side::Bowl, Side::Board]))
            .prop_map(|(a, b, height, side)| match side {
                Side::Straight => MouldForm::Drawn { base: a, rim: a, height, side },
                Side::Cone => MouldForm::Drawn { base: a, rim: b, height, side },
                Side::Bowl | Side::Board => {
                    MouldForm::Drawn { base: a.min(b), rim: a.max(b) + Length::mm(0.1), height, side }
                }
            });
    let pieces = select(vec![MouldPieces::One, MouldPieces::Several]);
    (any_outline(), prop_oneof![girths, drawn], any_levels(), pieces)
        .prop_map(|(outline, form, levels, pieces)| MouldPattern { outline, form, levels, pieces })
        .boxed()
}

fn any_lid() -> BoxedStrategy<LidPattern> {
    let ways = of(select(vec![LidWay::Mould, LidWay::Flat]));
    let fits = select(vec![LidFit::DropIn, LidFit::Cap, LidFit::Flush]);
    let lifts = of(select(vec![LidLift::Knob, LidLift::Loop, LidLift::None]));
    (ways, fits, lifts, of(length()), (of(length()), of(length())))
        .prop_map(|(way, fit, lift, height, (across, plaque))| {
            let plaque = plaque.map(|plaque| across.map_or(plaque, |across| plaque.min(across * 0.9)));
            LidPattern { fit: Some(fit), way, lift, height, across, plaque, ..LidPattern::default() }
        })
        .boxed()
}

fn any_levels() -> BoxedStrategy<Levels> {
    let widths = prop::collection::vec((length(), length()), 1..6).prop_map(|steps| {
        let mut height = Length::ZERO;
        let widths = steps.into_iter().map(|(step, width)| {
            height += step;
            WidthAt { height, width }
        });
        Levels::Widths(widths.collect())
    });
    prop_oneof![2 => Just(Levels::Even), 1 => Just(Levels::Scaled), 1 => widths].boxed()
}

fn any_outline() -> BoxedStrategy<Outline> {
    let size = || (length(), length()).prop_map(|(a, b)| FootSize { length: a.max(b), width: a.min(b) });
    let rays = prop::collection::vec(length(), 8..40);
    prop_oneof![
        4 => Just(Outline::Round),
        1 => (size(), 0.0..0.75_f64).prop_map(|(size, fullness)| Outline::Oval { size, fullness }),
        1 => size().prop_map(Outline::Stadium),
        1 => (size(), 0.001..1.0_f64)
            .prop_map(|(size, share)| Outline::Rectangle { corner: size.width * (share / 2.0), size }),
        // Hollow ones, which no file can bring, have to be borne too.
        1 => rays.prop_map(Outline::Traced),
    ]
    .boxed()
}

fn any_base() -> BoxedStrategy<BasePattern> {
    let woods = of(prop::collection::vec(select(Catalogue::built_in().woods.clone()), 1..6));
    let show = (of(select(vec![Rings::None, Rings::Out, Rings::In])), of(any::<bool>()));
    (of(length()), of(length()), of(small()), of(small()), woods, of(small()), show)
        .prop_map(|(diameter, thickness, depth, width, woods, screw, (rings, sealed))| {
            let below = |length: Option<Length>, limit: Option<Length>| {
                length.filter(|length| limit.is_none_or(|limit| *length < limit))
            };
            BasePattern {
                diameter,
                thickness,
                groove_depth: below(depth, diameter.map(|diameter| diameter / 2.0)),
                groove_width: below(width, thickness),
                woods,
                screw_hole: below(screw, diameter),
                rings,
                sealed,
            }
        })
        .boxed()
}

fn any_staves() -> BoxedStrategy<StavesPattern> {
    let taper = of((prop_oneof![Just(Length::ZERO), length()], small()));
    let sides = (of(select(OvalSide::ALL.to_vec())), of(select(Spacing::ALL.to_vec())));
    let sizes = (of(small()), of(small()), of(length()), of(small()));
    (of(count()), of(stock(STRIPS)), sizes, taper, of(0_u32..=999), sides)
        .prop_map(|(count, stock, (width, gap, length, ends), taper, spares, (oval_side, spacing))| {
            let width = width.filter(|width| stock.as_ref().is_none_or(|stock| *width <= stock.width));
            let full = width.or(stock.as_ref().map(|stock| stock.width));
            let taper = taper
                .filter(|(_, foot)| full.is_none_or(|full| *foot <= full))
                .map(|(from, foot)| TaperPattern { from, foot });
            let colours = Vec::new();
            StavesPattern {
                count,
                stock,
                width,
                gap,
                taper,
                length,
                spares,
                spacing,
                ends,
                oval_side,
                colours,
            }
        })
        .boxed()
}

fn any_weave() -> BoxedStrategy<WeavePattern> {
    let until = prop_oneof![
        8 => (1_u32..=60).prop_map(Until::Rows),
        1 => (60_u32..=2000).prop_map(Until::Rows),
        4 => length().prop_map(Until::Height),
        4 => length().prop_map(Until::BelowTop),
        1 => Just(Until::BelowTop(Length::ZERO)),
    ];
    let rule = || (1_u32..=8, 1_u32..=8).prop_map(|(over, under)| Rule::new(over, under));
    let weave = prop_oneof![
        4 => Just(WeaveKind::Plain),
        1 => rule().prop_map(WeaveKind::Twill),
        1 => rule().prop_map(WeaveKind::ReversedTwill),
        1 => rule().prop_map(WeaveKind::Chase),
        1 => rule().prop_map(WeaveKind::Slew),
        1 => Just(WeaveKind::Pairing),
        1 => (3_u32..=5).prop_map(WeaveKind::Wale),
        1 => Just(WeaveKind::SkipOne),
        1 => Just(WeaveKind::Drawn),
    ];
    let chart = (1_usize..9, 1_usize..9).prop_flat_map(|(rows, staves)| {
        prop::collection::vec(prop::collection::vec(any::<bool>(), staves), rows)
    });
    let colours = select(BUILT_IN.to_vec()).prop_map(|(name, _)| Colour::built_in(name).unwrap_or_default());
    let colours = prop::collection::vec(prop::collection::vec(colours, 1..3), 0..4);
    let rows = (of(select(vec![Way::Continuous, Way::RowByRow])), of(select(vec![Lean::Left, Lean::Right])));
    let extent = (until, of(0.5..=3.0_f64), of(small()), 0_u32..4, of(1_u32..=999));
    let weavers = (stock(STRIPS), prop::collection::vec(stock(STRIPS), 0..3), colours);
    let strands = prop::collection::vec(length(), 0..3);
    let course = (weave, of(chart), rows, extent, weavers, strands, any::<bool>(), of(1_u32..=500)).prop_map(
        |(weave, chart, (way, lean), extent, (weaver, others, colours), strands, step_up, band)| {
            let (until, packing, spaced, doubled, start) = extent;
            CoursePattern {
                others,
                colours,
                strands,
                way,
                lean,
                band,
                step_up,
                start,
                chart: chart.and_then(|rows| Drawn::of(rows).ok()),
                doubled,
                packing,
                spaced,
                ..CoursePattern::new(weave, weaver, until)
            }
        },
    );
    let face = of(select(CaneFace::ALL.to_vec()));
    (prop::collection::vec(course, 0..5), of(0.0..=0.3_f64), of(select(Direction::ALL.to_vec())), face)
        .prop_map(|(courses, shrink, direction, first_face)| WeavePattern {
            courses,
            shrink,
            direction,
            first_face,
            ..WeavePattern::default()
        })
        .boxed()
}

fn any_rim() -> BoxedStrategy<RimPattern> {
    let hoop = || {
        of(stock(&[Kind::HalfRoundReed, Kind::FlatOvalReed, Kind::FlatReed, Kind::RoundReed, Kind::Splint]))
    };
    (of(select(HoopWay::ALL.to_vec())), hoop(), hoop(), of(length()))
        .prop_map(|(hoops, stock, inner, lap)| RimPattern { hoops, stock, inner, lap, hinged: false })
        .boxed()
}

fn any_filler() -> BoxedStrategy<FillerPattern> {
    prop_oneof![
        Just(FillerPattern::Choose),
        Just(FillerPattern::None),
        stock(&[Kind::RoundReed, Kind::FlatReed, Kind::ChairCane]).prop_map(FillerPattern::Stock),
    ]
    .boxed()
}

fn any_every() -> BoxedStrategy<Option<Every>> {
    of(select(vec![Every::Stave, Every::OtherStave])).boxed()
}

fn any_lashing() -> BoxedStrategy<Option<LashingPattern>> {
    let style = of(select(vec![LashingStyle::Single, LashingStyle::Crossed]));
    let lashed =
        (of(stock(&[Kind::ChairCane, Kind::BinderCane, Kind::Splint])), any_every(), style, of(length()))
            .prop_map(|(weaver, every, style, tail)| Some(LashingPattern { weaver, every, style, tail }))
            .boxed();
    prop_oneof![9 => lashed, 1 => Just(None)].boxed()
}

fn any_pins() -> BoxedStrategy<PinsPattern> {
    (of(stock(&[Kind::Pin])), any_every()).prop_map(|(stock, every)| PinsPattern { stock, every }).boxed()
}

fn any_ears() -> BoxedStrategy<EarsPattern> {
    let material = of(select(EarMaterial::ALL.to_vec()));
    let placing = of(select(vec![
        EarPlacing::OnStaves,
        EarPlacing::StaveAndGap,
        EarPlacing::Shared,
        EarPlacing::ByAngle,
    ]));
    let hole = of(prop_oneof![Just(Length::ZERO), small()]);
    let wood = of(select(Catalogue::built_in().woods.clone()));
    let way = of(select(EarWay::ALL.to_vec()));
    (material, wood, way, placing, of(small()), of(small()), hole, of(length()))
        .prop_map(|(material, wood, way, placing, width, thickness, hole_height, tail)| EarsPattern {
            material,
            wood,
            way,
            axis: None,
            placing,
            width,
            thickness,
            hole_height,
            tail,
        })
        .boxed()
}

fn any_handle() -> BoxedStrategy<HandlePattern> {
    let curve = of(select(vec![BailCurve::Semicircle, BailCurve::ThreeCentred, BailCurve::HalfEllipse]));
    let kind = of(select(vec![HandleKind::Swing, HandleKind::Fixed, HandleKind::Knob]));
    let joint = of(select(vec![HandleJoint::Outside, HandleJoint::Slot, HandleJoint::Between]));
    let made = of(select(vec![HandleMade::Bought, HandleMade::Bent]));
    let ways = (kind, joint, made, of(small()), of(length()));
    let sizes = (of(length()), of(length()), of(small()), of(small()));
    (ways, curve, sizes, of(stock(&[Kind::Rivet])))
        .prop_map(|(ways, curve, (rise, corner, width, thickness), rivet)| HandlePattern {
            kind: ways.0,
            axis: None,
            joint: ways.1,
            made: ways.2,
            shows: ways.3,
            ends: ways.4,
            curve,
            rise: rise.filter(|_| curve != Some(BailCurve::Semicircle)),
            corner: corner.filter(|_| matches!(curve, None | Some(BailCurve::ThreeCentred))),
            width,
            thickness,
            rivet,
        })
        .boxed()
}

fn any_finish() -> BoxedStrategy<Finish> {
    select(vec![Finish::None, Finish::Shellac, Finish::StainAndShellac, Finish::Oil, Finish::Varnish]).boxed()
}

fn any_finish_on() -> BoxedStrategy<Vec<FinishPart>> {
    prop::sample::subsequence(FinishPart::ALL.to_vec(), 0..=FinishPart::ALL.len()).boxed()
}

fn any_ready() -> BoxedStrategy<AllReady> {
    prop::sample::subsequence(Ready::ALL.to_vec(), 0..=Ready::ALL.len()).prop_map(AllReady::of).boxed()
}

fn any_units() -> BoxedStrategy<Units> {
    select(vec![Units::Inches, Units::Millimetres]).boxed()
}
