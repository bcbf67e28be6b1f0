//! Sections of stock: flat oval, flat, half round, round and cane.

use basket::stock::{Kind, Material};

use super::detail::Detail;

/// Height of flat oval stock half way to its edge: a little over the parabola's 0.875, so that the
/// straight sides hold as much as the curve.
const SHOULDER: f32 = 0.915;
/// How much of its thickness the edge of flat stock is broken by.
const BROKEN: f32 = 0.12;

/// A section as (across, out) in mm, counter-clockwise; its flat side lies at out = 0, the middle at
/// across = 0.
pub(super) type CrossSection = Vec<[f32; 2]>;

/// The section of a stock at this width, its thickness as it is.
///
/// Flat oval: flat below, half as thick at its edges, a parabola above; that fills five sixths of its
/// box, as the catalogue's thicknesses take it. Half round: half an ellipse. Cane: flat back, round
/// face. What is left is round, or flat with its edges broken.
pub(super) fn section(stock: &Material, width: f32, detail: Detail) -> CrossSection {
    let (half, thick) = (width / 2.0, stock.thickness.to_mm() as f32);
    match stock.kind {
        Kind::FlatOvalReed => flat_oval(half, thick, detail),
        Kind::HalfRoundReed => half_round(half, thick, arc_steps(detail)),
        Kind::RoundReed | Kind::Pin | Kind::Rivet | Kind::Burr => round(half, thick, 2 * arc_steps(detail)),
        Kind::ChairCane | Kind::BinderCane => cane(half, thick, detail),
        Kind::FlatReed | Kind::Splint => flat(half, thick, detail),
    }
}

/// The section of a weaver: as a thumbnail no more than a ridge, since rows make up most of a solid.
pub(super) fn weaver_section(stock: &Material, width: f32, detail: Detail) -> CrossSection {
    if detail == Detail::Thumbnail {
        let half = width / 2.0;
        return vec![[-half, 0.0], [half, 0.0], [0.0, stock.thickness.to_mm() as f32]];
    }
    section(stock, width, detail)
}

/// From where to where a section reaches at this distance out.
pub(super) fn extent(section: &CrossSection, cut: f32) -> [f32; 2] {
    let next = section.iter().cycle().skip(1);
    let crossings = section.iter().zip(next).filter_map(|(a, b)| {
        let (near, far) = (a[1].min(b[1]), a[1].max(b[1]));
        (cut >= near && cut <= far && far > near).then(|| a[0] + (b[0] - a[0]) * (cut - a[1]) / (b[1] - a[1]))
    });
    let [low, high] =
        crossings.fold([f32::INFINITY, f32::NEG_INFINITY], |[low, high], up| [low.min(up), high.max(up)]);
    if low <= high { [low, high] } else { [0.0, 0.0] }
}

const fn arc_steps(detail: Detail) -> u32 {
    match detail {
        Detail::Full => 6,
        Detail::Page | Detail::Column => 4,
        Detail::Thumbnail => 2,
    }
}

fn flat_oval(half: f32, thick: f32, detail: Detail) -> CrossSection {
    let broken = (BROKEN * thick).min(half / 2.0);
    match detail {
        Detail::Full => vec![
            [broken - half, 0.0],
            [half - broken, 0.0],
            [half, broken],
            [half, thick * 0.5],
            [half * 0.5, thick * SHOULDER],
            [0.0, thick],
            [half * -0.5, thick * SHOULDER],
            [-half, thick * 0.5],
            [-half, broken],
        ],
        Detail::Page | Detail::Column | Detail::Thumbnail => {
            vec![[-half, 0.0], [half, 0.0], [half, thick * 0.5], [0.0, thick], [-half, thick * 0.5]]
        }
    }
}

fn half_round(half: f32, thick: f32, steps: u32) -> CrossSection {
    let arc = |step: u32| {
        let (sin, cos) = (std::f32::consts::PI * step as f32 / steps as f32).sin_cos();
        [half * cos, thick * sin.max(0.0)]
    };
    (0..=steps).map(arc).collect()
}

fn round(half: f32, thick: f32, steps: u32) -> CrossSection {
    let at = |step: u32| {
        let (sin, cos) = (std::f32::consts::TAU * (step as f32 + 0.5) / steps as f32).sin_cos();
        [half * cos, thick / 2.0 * (1.0 + sin)]
    };
    (0..steps).map(at).collect()
}

fn cane(half: f32, thick: f32, detail: Detail) -> CrossSection {
    if detail == Detail::Full {
        let (edge, face) = (thick * 0.55, half * 0.5);
        vec![[-half, 0.0], [half, 0.0], [half, edge], [face, thick], [-face, thick], [-half, edge]]
    } else {
        vec![[-half, 0.0], [half, 0.0], [half, thick], [-half, thick]]
    }
}

fn flat(half: f32, thick: f32, detail: Detail) -> CrossSection {
    let broken = (BROKEN * thick).min(half / 2.0);
    if detail == Detail::Full {
        vec![
            [broken - half, 0.0],
            [half - broken, 0.0],
            [half, broken],
            [half, thick - broken],
            [half - broken, thick],
            [broken - half, thick],
            [-half, thick - broken],
            [-half, broken],
        ]
    } else {
        vec![[-half, 0.0], [half, 0.0], [half, thick], [-half, thick]]
    }
}

#[cfg(test)]
mod tests {
    use basket::Catalogue;

    use super::*;

    fn area(section: &CrossSection) -> f32 {
        let next = section.iter().cycle().skip(1);
        section.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum::<f32>() / 2.0
    }

    fn filled(name: &str) -> f32 {
        let stock = Catalogue::built_in().material(name).expect("in the catalogue");
        let width = stock.width.to_mm() as f32;
        area(&section(stock, width, Detail::Full)) / (width * stock.thickness.to_mm() as f32)
    }

    /// Flat oval reed fills five sixths of its box, as the catalogue takes it from feet per pound;
    /// half a circle fills π/4 of its own.
    #[test]
    fn sections_run_counter_clockwise_and_fill_their_share() {
        assert!((filled("flat oval reed 1/4 in") - 5.0 / 6.0).abs() < 0.01);
        assert!((filled("half round reed 3/8 in") - std::f32::consts::FRAC_PI_4).abs() < 0.05);
        assert!((filled("cane fine") - 0.8875).abs() < 0.01);
    }
}
