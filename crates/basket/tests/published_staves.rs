//! Staves and the base against published baskets, tables and geometry.

use std::f64::consts::PI;

use basket::base::{Base, movement};
use basket::form;
use basket::pattern::{
    BasePattern, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side, StavesPattern, TaperPattern,
};
use basket::staves::{Needs, Staves, bend_strain, count_on, touch_width};
use basket::stock::{Catalogue, Kind, Material};
use basket::uprights::Standing;
use basket::weave::Running;
use basket::{Hand, Length, Making};

fn mm(figure: f64) -> Length {
    Length::mm(figure)
}

fn inches(figure: f64) -> Length {
    Length::inches(figure)
}

#[track_caller]
fn close(measured: f64, published: f64, allowance: f64) {
    assert!((measured - published).abs() <= allowance, "{measured} is not {published} within {allowance}");
}

fn flat(name: &str, width: Length, thickness: Length) -> Material {
    Material::bare(name, Kind::FlatReed, width, thickness)
}

fn drawn(base: Length, rim: Length, height: Length, side: Side) -> form::Form {
    form::Form::on_mould(&MouldPattern {
        outline: Outline::Round,
        levels: Levels::Even,
        pieces: MouldPieces::One,
        form: MouldForm::Drawn { base, rim, height, side },
    })
}

fn base_on(mould: &form::Form, pattern: &BasePattern) -> Base {
    Base::of(pattern, None, mould, &mut Making::new(&Catalogue::default(), &Hand::USUAL))
}

/// Staves that lie on the mould.
static BARE: Standing = Standing::new(Vec::new());

/// One course that runs or does not hold.
fn one(runs: bool) -> Running {
    Running { courses: 1, run: u32::from(runs), hold: u32::from(runs) }
}

fn odd(count: u32) -> Running {
    one(count % 2 == 1)
}

fn any(_: u32) -> Running {
    one(true)
}

fn needs<'a>(form: &'a form::Form, wall: f64, rim: f64, running: &'a dyn Fn(u32) -> Running) -> Needs<'a> {
    Needs {
        form,
        stocks: &[],
        wall: mm(wall),
        rim: mm(rim),
        weaver: mm(1.2),
        row: mm(2.5),
        behind: &BARE,
        ears: false,
        running,
    }
}

/// A 10 in mould of 800 mm girth at the rim, on a base of 180 mm.
fn ten_inch() -> (form::Form, Base) {
    let mould = drawn(mm(180.0), mm(800.0 / PI), mm(110.0), Side::Bowl);
    let base = base_on(&mould, &BasePattern::default());
    (mould, base)
}

fn solve(pattern: &StavesPattern, base: &Base, needs: &Needs<'_>) -> Staves {
    Staves::solve(pattern, base, needs, &mut Making::new(&Catalogue::default(), &Hand::USUAL))
}

/// Source: a learner's weblog on a mould basket: 800 mm girth, 6 mm staves, 1.5 mm gaps: 800/7.5 =
/// 106.67, "106 or 107" staves, at least 10 % spares. On 107 the true gap is 800/107 − 6.
#[test]
fn a_learners_ten_inch_basket() {
    close(count_on(mm(800.0), mm(6.0), mm(1.5)), 106.67, 0.005);
    let (mould, base) = ten_inch();
    close(mould.girth_widest().to_mm(), 800.0, 1e-9);
    let pattern = StavesPattern {
        stock: Some(flat("cane", mm(6.0), mm(1.5))),
        gap: Some(mm(1.5)),
        ..StavesPattern::default()
    };
    let wall = mould.arc().to_mm() - 10.0;
    let staves = solve(&pattern, &base, &needs(&mould, wall, 10.0, &odd));
    assert_eq!(staves.uprights.count, 107);
    close(staves.gap_rim.to_mm(), 1.4766, 5e-5);
    assert!(staves.spares >= 11);
    let any_count = solve(&pattern, &base, &needs(&mould, wall, 10.0, &any));
    assert!((106..=107).contains(&any_count.uprights.count));
}

/// Source: a basket supplier's page on slotted bases: a 5 in round base with 3/8 in stakes and
/// 3/16 in gaps takes 15.708 / 0.5625 = 27.93, hence 27 or 28 stakes.
#[test]
fn a_suppliers_five_inch_base() {
    close(count_on(inches(5.0 * PI), inches(0.375), inches(0.1875)), 27.93, 0.005);
    let mould = drawn(inches(5.0), inches(5.0), inches(4.0), Side::Straight);
    let base = base_on(&mould, &BasePattern { diameter: Some(inches(5.0)), ..BasePattern::default() });
    let pattern = StavesPattern {
        stock: Some(flat("flat reed 3/8 in", inches(0.375), mm(1.2))),
        gap: Some(inches(0.1875)),
        ..StavesPattern::default()
    };
    let count = |running: &dyn Fn(u32) -> Running| {
        solve(&pattern, &base, &needs(&mould, 90.0, 10.0, running)).uprights.count
    };
    assert_eq!(count(&any), 28);
    assert_eq!(count(&odd), 27);
}

/// Source: plane geometry, worked by hand: r = 80 mm, n = 25.
#[test]
fn feet_in_the_groove() {
    close(touch_width(mm(80.0), 25).to_mm(), 20.2127, 5e-5);
    close(2.0 * PI * 80.0 / 25.0, 20.1062, 5e-5);
}

/// Source: elementary beam theory: strain of the outer face t/(2R) by the middle's radius, and
/// t/(2R + t) by the inner one; 2 mm bent over a radius of 50 mm.
#[test]
fn strain_of_a_bent_strip() {
    close(bend_strain(mm(2.0), mm(51.0)), 0.019_608, 5e-7);
    assert!(bend_strain(mm(2.0), Length::ZERO).is_finite());
}

/// Source: USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190 (2010), chapters 4 and 13:
/// 6.000 in of sugar maple (tangential 9.9 %, from memory) from 12 % to 6 % moisture.
#[test]
fn a_base_moves_with_the_seasons() {
    close(movement(inches(6.0), 0.099, 6.0).to_inches(), 0.119, 0.0005);
}

/// Source: common practice for what a pattern leaves open; the arithmetic is checked by hand.
#[test]
fn a_base_that_is_left_open() {
    let mould = drawn(inches(5.0), inches(8.0), inches(4.0), Side::Bowl);
    let catalogue = Catalogue::default();
    let mut making = Making::new(&catalogue, &Hand::USUAL);
    let base = Base::of(&BasePattern::default(), Some(mm(2.0)), &mould, &mut making);
    let choices = making.take_choices();
    // 5 in less twice 2 mm is 4.8425 in.
    close(base.diameter.to_inches(), 4.8125, 1e-9);
    close(base.groove_width.to_inches(), 3.0 / 32.0, 1e-9);
    close(base.groove_radius().to_inches(), 4.8125 / 2.0 - 0.25, 1e-9);
    close(base.plug_diameter.to_inches(), 0.375, 1e-9);
    let keys: Vec<&str> = choices.iter().map(|choice| choice.key).collect();
    let own = keys.iter().map(|key| key.trim_start_matches("base.")).collect::<Vec<_>>().join(", ");
    assert_eq!(own, "diameter, thickness, groove.depth, groove.width, screw, wood, sealed");
}

/// Every part of the length is there, and the whole is a whole number of sixteenths.
#[test]
fn the_length_is_the_sum_of_its_parts() {
    // An upright wall turns by a right angle: R = rise = 3/16 in, arc R·π/2, and level as far as the
    // base leaves 1/4 in and the middle of a stave 2 mm thick lies outside the mould.
    let mould = drawn(inches(5.0), inches(5.0), inches(4.0), Side::Straight);
    let base = base_on(&mould, &BasePattern { diameter: Some(inches(4.5)), ..BasePattern::default() });
    let staves = solve(&StavesPattern::default(), &base, &needs(&mould, 80.0, 10.0, &odd));
    let parts = staves.length_parts;
    close(staves.bend.radius.to_inches(), 0.1875, 1e-9);
    close(parts.turn.to_inches(), 0.1875 * PI / 2.0 + (0.25 - 0.1875) + 1.0 / 25.4, 1e-9);
    close(parts.groove.to_inches(), 0.25, 1e-9);
    close((parts.wall + parts.rim).to_mm(), 90.0, 1e-9);
    close(parts.total().to_mm(), staves.length.to_mm(), 1e-9);
    let sixteenths = staves.length.to_inches() * 16.0;
    close(sixteenths, sixteenths.round(), 1e-6);
    assert!(parts.trim >= inches(1.0) - mm(1e-9) && parts.trim < inches(1.0625));
}

/// On a cone whose girth falls straight to the foot of the stave, a straight taper keeps the gap
/// even all the way: the solver must find it.
#[test]
fn a_cone_takes_a_perfect_taper() {
    let mould = drawn(mm(160.0), mm(240.0), mm(150.0), Side::Cone);
    let base = base_on(&mould, &BasePattern { diameter: Some(mm(150.0)), ..BasePattern::default() });
    let pattern = StavesPattern {
        stock: Some(flat("wide", mm(14.0), mm(1.5))),
        gap: Some(mm(2.0)),
        ..StavesPattern::default()
    };
    let staves = solve(&pattern, &base, &needs(&mould, mould.arc().to_mm() - 10.0, 10.0, &odd));
    assert!(staves.taper.worst.to_mm() < 0.25, "{:?}", staves.taper);
    assert!(staves.narrowest.gap.to_mm() >= 1.2);
}

/// Checks the solver's taper against a plain search over points and feet.
#[test]
fn no_taper_of_a_plain_search_is_better() {
    let (mould, base) = ten_inch();
    let pattern = StavesPattern {
        stock: Some(flat("quarter", inches(0.25), mm(2.0))),
        count: Some(101),
        ..StavesPattern::default()
    };
    let needs = needs(&mould, mould.arc().to_mm() - 10.0, 10.0, &odd);
    let found = solve(&pattern, &base, &needs);
    let mut best = f64::INFINITY;
    for from in 0..=60 {
        for foot in 0..=60 {
            let from = mm(mould.arc().to_mm() * f64::from(from) / 60.0);
            let foot = mm(2.2 + (found.foot_touch.to_mm() - 0.25 - 2.2) * f64::from(foot) / 60.0);
            let taper = Some(TaperPattern { from, foot });
            let tried = solve(&StavesPattern { taper, ..pattern.clone() }, &base, &needs);
            if tried.narrowest.gap >= needs.weaver {
                best = best.min(tried.taper.worst.to_mm());
            }
        }
    }
    assert!(found.narrowest.gap >= needs.weaver - mm(1e-6), "{:?}", found.narrowest);
    assert!(found.taper.worst.to_mm() <= best + 0.05, "{:?} against {best}", found.taper);
    assert!(found.taper.worst_ideal <= found.taper.worst);
}

/// What the pattern fixes is kept, even where it is bad, and better counts are shown after it.
#[test]
fn what_is_fixed_is_kept() {
    let (mould, base) = ten_inch();
    let pattern = StavesPattern {
        count: Some(88),
        stock: Some(flat("quarter", inches(0.25), mm(2.0))),
        width: Some(mm(5.5)),
        gap: Some(mm(0.3)),
        taper: Some(TaperPattern { from: mm(70.0), foot: mm(5.4) }),
        length: Some(mm(100.0)),
        spares: Some(1),
        ..StavesPattern::default()
    };
    let catalogue = Catalogue::default();
    let mut making = Making::new(&catalogue, &Hand::USUAL);
    let needs = needs(&mould, 120.0, 10.0, &odd);
    let staves = Staves::solve(&pattern, &base, &needs, &mut making);
    let choices = making.take_choices();
    assert_eq!((staves.uprights.count, staves.spares), (88, 1));
    assert_eq!((staves.uprights.width, staves.length, staves.gap_wanted), (mm(5.5), mm(100.0), mm(0.3)));
    assert_eq!((staves.taper.from, staves.taper.foot), (mm(70.0), mm(5.4)));
    assert!(staves.length_parts.trim < Length::ZERO);
    assert!(choices.is_empty(), "{choices:?}");
    assert_eq!(staves.candidates.len(), 3);
    assert_eq!(staves.candidates[0].count, 88);
    assert_eq!(staves.candidates[0].reasons[0].id, "stave-reason-no-lock");
    for other in &staves.candidates[1..] {
        assert!(odd(other.count).all() && other.penalty < staves.candidates[0].penalty);
    }
}

/// Stock that does not go into the groove, or stands far off the mould at the foot, is not chosen while
/// other stock does better.
#[test]
fn stock_is_chosen_to_fit_the_groove() {
    let (mould, base) = ten_inch();
    let stocks = [
        flat("thick", inches(0.25), mm(3.2)),
        flat("right", inches(0.25), mm(2.0)),
        flat("wide", inches(0.75), mm(1.2)),
    ];
    let needs = needs(&mould, mould.arc().to_mm() - 10.0, 10.0, &odd);
    let staves = solve(&StavesPattern::default(), &base, &Needs { stocks: &stocks, ..needs });
    assert_eq!(staves.stock.name, "right");
    assert!(staves.candidates.iter().all(|candidate| candidate.stock.name != "thick"));
    let penalties: Vec<f64> = staves.candidates.iter().map(|candidate| candidate.penalty).collect();
    assert!(penalties.is_sorted());
}

mod any_pattern {
    use super::*;
    use proptest::prelude::*;

    fn maybe(range: std::ops::Range<f64>) -> impl Strategy<Value = Option<Length>> {
        prop::option::of(range.prop_map(Length::mm))
    }

    prop_compose! {
        fn any_base()(
            diameter in maybe(1.0..900.0), thickness in maybe(0.1..80.0),
            groove_depth in maybe(0.1..500.0), groove_width in maybe(0.05..30.0),
        ) -> BasePattern {
            BasePattern { diameter, thickness, groove_depth, groove_width, ..BasePattern::default() }
        }
    }

    prop_compose! {
        fn any_staves()(
            count in prop::option::of(1_u32..1000),
            stock in prop::option::of((0.2..80.0_f64, 0.1..20.0_f64)),
            width in maybe(0.1..80.0), gap in maybe(0.01..50.0),
            taper in prop::option::of((0.0..900.0_f64, 0.1..80.0_f64)),
            length in maybe(1.0..3000.0), spares in prop::option::of(0_u32..500),
        ) -> StavesPattern {
            StavesPattern {
                count,
                stock: stock.map(|(width, thickness)| flat("any", mm(width), mm(thickness))),
                width, gap,
                taper: taper.map(|(from, foot)| TaperPattern { from: mm(from), foot: mm(foot) }),
                length, spares, spacing: None, ends: None, oval_side: None, colours: Vec::new(),
            }
        }
    }

    fn hostile() -> impl Strategy<Value = Option<Length>> {
        let figures = [f64::NAN, f64::INFINITY, -f64::INFINITY, f64::MAX, -1.0, 0.0, 1e-300, 1.0, 50.0];
        prop::option::of(prop::sample::select(figures.to_vec()).prop_map(Length::mm))
    }

    fn any_mould() -> impl Strategy<Value = form::Form> {
        let side = prop_oneof![Just(Side::Straight), Just(Side::Cone), Just(Side::Bowl)];
        (1.0..900.0_f64, 1.0..900.0_f64, 1.0..600.0_f64, side)
            .prop_map(|(base, rim, height, side)| drawn(mm(base), mm(rim), mm(height), side))
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 600, failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn gives_finite_staves(
            mould in any_mould(), base in any_base(), pattern in any_staves(),
            wall in -50.0..900.0_f64, rim in 0.0..60.0_f64, weaver in 0.0..20.0_f64, ears: bool, modulus in 1_u32..4,
        ) {
            let base = base_on(&mould, &base);
            let running = |count: u32| one(count % modulus == 1);
            let needs = Needs { form: &mould, stocks: &[], wall: mm(wall), rim: mm(rim), weaver: mm(weaver), row: mm(weaver), behind: &BARE, ears, running: &running };
            let staves = solve(&pattern, &base, &needs);
            for figure in [
                staves.uprights.width, staves.taper.from, staves.taper.foot, staves.taper.worst, staves.taper.worst_ideal,
                staves.length, staves.gap_rim, staves.foot_touch, staves.bend.radius, base.movement,
            ] {
                prop_assert!(figure.to_mm().is_finite());
            }
            prop_assert!(staves.bend.strain.is_finite());
            prop_assert!(staves.candidates.iter().all(|candidate| candidate.penalty.is_finite()));
            prop_assert_eq!(staves.gaps.len(), 25);
            for at in &staves.gaps {
                let girth = staves.uprights.girth(&mould, at.along);
                let sum = (at.gap + at.width) * f64::from(staves.uprights.count);
                prop_assert!((sum - girth).to_mm().abs() < 1e-6 * girth.to_mm().max(1.0));
                prop_assert!((staves.uprights.width_at(at.along) - at.width).to_mm().abs() < 1e-6);
                prop_assert!(staves.narrowest.gap <= at.gap && at.gap <= staves.widest.gap);
            }
        }

        #[test]
        fn no_figure_whatever_stops_the_solver(
            figures in prop::collection::vec(hostile(), 16), count in prop::option::of(0_u32..), mould in any_mould(),
        ) {
            let mut figures = figures.into_iter().cycle();
            let mut next = || figures.next().flatten();
            let (diameter, thickness, groove_depth) = (next(), next(), next());
            let sizes = BasePattern { diameter, thickness, groove_depth, ..BasePattern::default() };
            let base = BasePattern { groove_width: next(), screw_hole: next(), ..sizes };
            let stock = next().map(|width| flat("any", width, next().unwrap_or(width)));
            let taper = next().map(|from| TaperPattern { from, foot: next().unwrap_or(from) });
            let spares = None;
            let pattern = StavesPattern {
                count, stock, width: next(), gap: next(), taper, length: next(), spares, spacing: None, ends: None, oval_side: None, colours: Vec::new(),
            };
            let [wall, rim, weaver] = [(); 3].map(|()| next().unwrap_or_default());
            let needs = Needs { form: &mould, stocks: &[], wall, rim, weaver, row: weaver, behind: &BARE, ears: true, running: &odd };
            let staves = solve(&pattern, &base_on(&mould, &base), &needs);
            prop_assert_eq!(count.unwrap_or(staves.uprights.count), staves.uprights.count);
            prop_assert!(!staves.candidates.is_empty());
        }

        #[test]
        fn more_staves_leave_smaller_gaps(mould in any_mould(), count in 3_u32..900) {
            let base = base_on(&mould, &BasePattern::default());
            let gap = |count| {
                let taper = Some(TaperPattern { from: mm(20.0), foot: mm(4.0) });
                let stock = Some(flat("any", mm(6.0), mm(1.5)));
                let pattern = StavesPattern { count: Some(count), stock, taper, ..StavesPattern::default() };
                solve(&pattern, &base, &needs(&mould, 80.0, 10.0, &odd)).gap_rim
            };
            prop_assume!(mould.profile.at(mm(90.0)).girth() > mm(1.0));
            prop_assert!(gap(count + 1) < gap(count));
        }
    }
}
