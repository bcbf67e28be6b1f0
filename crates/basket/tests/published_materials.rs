//! The catalogue against outside sources and against itself.

use basket::stock::Kind;
use basket::{Catalogue, Length, Material};

fn material(name: &str) -> &'static Material {
    Catalogue::built_in().material(name).unwrap_or_else(|| panic!("{name}"))
}

fn feet_per_put_up(material: &Material) -> f64 {
    material.put_up.length.unwrap().to_feet()
}

/// L. Day Perry, *Seat Weaving*, Manual Arts Press, 1917, pp. 7–8: a hank holds 1000 ft; the grades
/// from narrow to wide are carriage, superfine, fine-fine, fine, medium, common and binder, within
/// 1/16 to 3/16 in of width (the book's overall range, here with 10 % for rounding).
#[test]
fn cane_comes_in_hanks_and_its_grades_in_order() {
    let order = ["carriage", "superfine", "fine-fine", "fine", "medium", "common"];
    let mut widths: Vec<f64> = order.map(|grade| material(&format!("cane {grade}")).width.to_mm()).to_vec();
    widths.push(material("binder cane 4 mm").width.to_mm());
    assert!(widths.is_sorted_by(|a, b| a < b), "{widths:?}");
    assert!(widths.iter().all(|mm| (1.4287..=5.24).contains(mm)), "{widths:?}");
    for cane in Catalogue::built_in().of_kind(Kind::ChairCane) {
        assert!((feet_per_put_up(cane) - 1000.0).abs() < 1e-9);
        assert_eq!(cane.put_up.unit, "hank");
    }
}

/// How-to articles on caning: 60 to 80 strands in a hank of 1000 ft, so a strand is 12.5 to 16.7 ft
/// on the mean, and the longest are up to 18 ft. The shorter mean is counted on.
#[test]
fn a_strand_of_cane_is_what_a_hank_yields() {
    let strand = material("cane fine").put_up.strand.unwrap();
    assert!((strand.to_feet() - 1000.0 / 80.0).abs() < 1e-9);
    assert!(strand < Length::feet(18.0));
}

/// Computed: round reed of one density weighs in proportion to its section. At 520 kg/m³,
/// `454 g / (ρ π d²/4)` is 3644 ft mm² per pound over the square of the diameter. Numbers 0 to 9 keep
/// to it within 8 % (a check on slips of the pen; trade sizes vary by about 10 %).
#[test]
fn round_reed_runs_as_many_feet_as_its_section_allows() {
    let pound = 0.453_592_37 / (520.0 * std::f64::consts::FRAC_PI_4 * 1e-6) / 0.3048;
    assert!((pound - 3644.0).abs() < 1.0, "{pound}");
    for number in ["0", "1", "2", "3", "4", "5", "5.5", "6", "7", "8", "9"] {
        let reed = material(&format!("round reed {number}"));
        let ratio = feet_per_put_up(reed) / (pound / reed.width.to_mm().powi(2));
        assert!((0.92..=1.08).contains(&ratio), "No. {number}: {ratio}");
    }
}

/// A basket supplier's questions and answers, 24 May 2010: a coil of half-inch flat reed runs about
/// 185 ft. Computed from it: feet times inches of width stay at 92 ± 7 from 1/4 to 1 in.
#[test]
fn flat_reed_runs_as_many_feet_as_its_width_allows() {
    assert!((feet_per_put_up(material("flat reed 1/2 in")) - 185.0).abs() < 1e-9);
    for reed in Catalogue::built_in().of_kind(Kind::FlatReed).filter(|reed| reed.width.to_inches() > 0.249) {
        let product = feet_per_put_up(reed) * reed.width.to_inches();
        assert!((product - 92.0).abs().round() <= 7.0, "{}: {product}", reed.name);
    }
}

/// A magazine of 1983 gives No. 0 as 1/64 in; catalogues have about 3/64 in. The slip is not copied.
#[test]
fn number_0_is_not_a_sixty_fourth() {
    let diameter = material("round reed 0").width;
    assert!((diameter.to_inches() - 3.0 / 64.0).abs() < 0.003);
}

/// Anna A. Gill, *Practical Basketry*, 1916, p. 25: Nos. 1 and 2 soak 10 minutes, Nos. 4
/// and 5 soak 15 to 20.
#[test]
fn reed_soaks_as_long_as_gill_says() {
    for (number, soak) in [("1", (10.0, 10.0)), ("2", (10.0, 10.0)), ("4", (15.0, 20.0)), ("5", (15.0, 20.0))]
    {
        assert_eq!(material(&format!("round reed {number}")).soak_minutes, Some(soak));
    }
}

/// L. Day Perry, *Seat Weaving*, Manual Arts Press, 1917, p. 61: hickory splint is slightly under
/// 1/16 in thick, 1/2 in wide and 8 to 10 ft long, twelve strands to a coil.
#[test]
fn hickory_splint() {
    let hickory = material("hickory splint 1/2 in");
    assert!(hickory.thickness < Length::inches(1.0 / 16.0) && hickory.thickness > Length::inches(0.055));
    assert_eq!(hickory.width, Length::inches(0.5));
    assert!((8.0..=10.0).contains(&(feet_per_put_up(hickory) / 12.0)));
}

/// USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190, 2010, table 4-3.
#[test]
fn woods_shrink_as_the_handbook_says() {
    for (name, radial, tangential) in [
        ("cherry", 0.037, 0.071),
        ("white oak", 0.056, 0.105),
        ("walnut", 0.055, 0.078),
        ("beech", 0.055, 0.119),
    ] {
        let wood = Catalogue::built_in().wood(name).unwrap();
        assert!((wood.radial - radial).abs() < 1e-9 && (wood.tangential - tangential).abs() < 1e-9, "{name}");
    }
}

/// An engineer's parts notes: an escutcheon pin of this size measured 0.050 in, which lies by the
/// steel-wire column for No. 18 (0.0475 in), not by the American wire gauge (0.0403 in).
#[test]
fn pins_follow_the_steel_wire_gauge() {
    let shank = material("brass pin 18 x 1/2 in").width.to_inches();
    assert!((shank - 0.0475).abs() < 0.001 && (shank - 0.050).abs() < (shank - 0.0403).abs());
}

#[test]
fn names_are_unique_and_found_again() {
    let catalogue = Catalogue::built_in();
    let mut names: Vec<&str> = catalogue.materials.iter().flat_map(Material::names).collect();
    for material in &catalogue.materials {
        for name in material.names() {
            assert_eq!(catalogue.material(name).map(|found| &found.name), Some(&material.name), "{name}");
        }
    }
    let all = names.len();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), all);
    assert_eq!(
        catalogue.material("Round  Reed NO. 2").map(|found| found.name.as_str()),
        Some("round reed 2")
    );
}

#[test]
fn every_figure_has_its_source() {
    for material in &Catalogue::built_in().materials {
        let figures = [
            ("width", true),
            ("thickness", true),
            ("length", material.length.is_some()),
            ("put-up", true),
            ("strand", material.put_up.strand.is_some()),
            ("soak", material.soak_minutes.is_some()),
            ("bend", material.bend_limit.is_some()),
            ("shrink", true),
        ];
        for (figure, given) in figures {
            let source = material.sources.get(figure);
            assert_eq!(source.is_some_and(|source| !source.is_empty()), given, "{}: {figure}", material.name);
        }
        assert!(
            material.thickness <= material.width && material.thickness > Length::ZERO,
            "{}",
            material.name
        );
    }
    assert!(
        Catalogue::built_in()
            .woods
            .iter()
            .all(|wood| !wood.source.is_empty() && wood.radial < wood.tangential)
    );
}
