//! Values within the limits of a key: usual ones, any, and the limits themselves.

use basket::colour::BUILT_IN;
use basket::pattern::keys::weaves::{self, Figures, LONGEST_FLOAT};
use basket::pattern::keys::{Lengths, Takes, Texts};
use basket::pattern::{Rule, WeaveKind};
use basket::stock::{Kind, Wood};
use basket::{Catalogue, Length};
use fastrand::Rng;

/// Where values come from.
pub(crate) struct Values {
    rng: Rng,
    /// Share of values that are usual ones.
    usual: f64,
    /// Share of the keys that may be left out which are written.
    fullness: f64,
    /// The maker's own stock.
    own: Vec<(String, Kind)>,
}

impl Values {
    pub(crate) fn of(seed: u64) -> Self {
        let mut rng = Rng::with_seed(seed);
        let usual = [0.98, 0.9, 0.7, 0.3][rng.usize(..4)];
        let fullness = [0.15, 0.4, 0.8][rng.usize(..3)];
        Self { rng, usual, fullness, own: Vec::new() }
    }

    /// Notes a stock of the maker's own, which may be asked for from now on.
    pub(crate) fn own(&mut self, name: String, kind: Kind) {
        self.own.push((name, kind));
    }

    pub(crate) fn chance(&mut self, share: f64) -> bool {
        self.rng.f64() < share
    }

    pub(crate) fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.rng.usize(..all.len())]
    }

    /// A number of things in a list: mostly few, seldom as many as there may be.
    pub(crate) fn few(&mut self, most: usize) -> usize {
        if self.chance(0.05 * (1.0 - self.usual)) { most } else { self.rng.usize(1..=most.min(4)) }
    }

    /// Whether a key that may be left out is written.
    pub(crate) fn is_full(&mut self) -> bool {
        self.chance(self.fullness)
    }

    /// A weave with figures.
    pub(crate) fn weave(&mut self) -> WeaveKind {
        match weaves::ALL[self.rng.usize(..weaves::ALL.len())].figures {
            Figures::None(kind) => kind,
            Figures::Rule(kind) => {
                kind(Rule::new(self.rng.u32(1..=LONGEST_FLOAT), self.rng.u32(1..=LONGEST_FLOAT)))
            }
            Figures::Rods(kind, rods) => kind(rods[self.rng.usize(..rods.len())]),
        }
    }

    /// A value of a key that holds no section.
    pub(crate) fn simple(&mut self, takes: &Takes) -> String {
        match takes {
            Takes::Text(Texts::Line) => "\"Any line\"".to_owned(),
            Takes::Text(Texts::Paragraphs(most)) => {
                format!("\"{}\"", "Any text. ".repeat(self.few(most / 10)))
            }
            // A file beside the pattern; there is none.
            Takes::Text(Texts::Photo) => "\"none.png\"".to_owned(),
            Takes::Length(lengths) => self.length(*lengths),
            Takes::Count(counts) => {
                let [low, high] =
                    if self.chance(self.usual) { counts.usually } else { [counts.least, counts.most] };
                self.count(low, high).to_string()
            }
            Takes::Share(shares) => self.within(shares.least, shares.most).to_string(),
            Takes::Minutes(most) => self.count(1, *most).to_string(),
            Takes::Flag => self.rng.bool().to_string(),
            Takes::Word(words) => format!("\"{}\"", words[self.rng.usize(..words.len())].word),
            Takes::Words(words) => {
                let each: Vec<String> =
                    words.iter().filter(|_| self.rng.bool()).map(|one| format!("\"{}\"", one.word)).collect();
                format!("[{}]", each.join(", "))
            }
            Takes::End => self.end(),
            Takes::Material(kinds) => self.material(kinds),
            Takes::Materials(list) => {
                let each: Vec<String> =
                    (0..self.rng.usize(1..=list.most)).map(|_| self.material(list.each)).collect();
                format!("[{}]", each.join(", "))
            }
            Takes::Wood => format!("\"{}\"", self.wood().name),
            Takes::Woods(most) => {
                let each: Vec<String> =
                    (0..self.rng.usize(1..=*most)).map(|_| format!("\"{}\"", self.wood().name)).collect();
                format!("[{}]", each.join(", "))
            }
            Takes::Colours(most) => {
                let count = self.few(*most);
                self.colours(count)
            }
            Takes::WeaverColours(list) => {
                let each: Vec<String> = (0..self.rng.usize(1..=list.most))
                    .map(|_| {
                        let count = self.few(list.each);
                        self.colours(count)
                    })
                    .collect();
                format!("[{}]", each.join(", "))
            }
            Takes::Lengths(list) => {
                let each: Vec<String> = (0..self.few(list.most)).map(|_| self.length(list.each)).collect();
                format!("[{}]", each.join(", "))
            }
            Takes::Chart(most) => self.chart(*most),
            Takes::OwnColours(_) => r##"{ "own colour" = "#2b4c7e" }"##.to_owned(),
            Takes::Weave
            | Takes::Pairs(_)
            | Takes::Section(_)
            | Takes::Part(..)
            | Takes::Sections(_)
            | Takes::Named(_) => String::new(),
        }
    }

    fn length(&mut self, lengths: Lengths) -> String {
        let (least, most) = (lengths.least.to_mm(), lengths.most.to_mm());
        if lengths.zero && self.chance(0.1) {
            return "0".to_owned();
        }
        let usual = lengths.usually.map_or([1.0, most.min(30.0)], |usual| usual.map(Length::to_mm));
        let [low, high] = if self.chance(self.usual) { usual } else { [least, most] };
        millimetres(self.within(low.max(least), high))
    }

    /// A figure between two others, the limits themselves among them; small ones as often as large ones.
    fn within(&mut self, low: f64, high: f64) -> f64 {
        match self.rng.u32(..20) {
            0 => low,
            1 => high,
            _ if low > 0.0 => (low.ln() + self.rng.f64() * (high / low).ln()).exp().clamp(low, high),
            _ => low + self.rng.f64() * (high - low),
        }
    }

    fn count(&mut self, low: u32, high: u32) -> u32 {
        self.within(f64::from(low), f64::from(high)).round() as u32
    }

    fn end(&mut self) -> String {
        match self.rng.u32(..3) {
            0 => "\"mould top\"".to_owned(),
            1 => format!("\"{} below mould top\"", millimetres(self.within(0.05, 100.0))),
            _ => format!("\"height {}\"", millimetres(self.within(0.05, 400.0))),
        }
    }

    fn material(&mut self, kinds: &[Kind]) -> String {
        let own: Vec<&String> =
            self.own.iter().filter(|(_, kind)| kinds.contains(kind)).map(|(name, _)| name).collect();
        if !own.is_empty() && self.rng.bool() {
            return format!("\"{}\"", own[self.rng.usize(..own.len())]);
        }
        let known = Catalogue::built_in().materials.iter().filter(|one| kinds.contains(&one.kind));
        let known: Vec<_> = known.collect();
        format!("\"{}\"", known[self.rng.usize(..known.len())].name)
    }

    fn wood(&mut self) -> Wood {
        let woods = &Catalogue::built_in().woods;
        woods[self.rng.usize(..woods.len())].clone()
    }

    fn colours(&mut self, count: usize) -> String {
        let each: Vec<String> =
            (0..count).map(|_| format!("\"{}\"", BUILT_IN[self.rng.usize(..BUILT_IN.len())].0)).collect();
        format!("[{}]", each.join(", "))
    }

    fn chart(&mut self, most: usize) -> String {
        let (rows, staves) = (self.few(most), self.few(most));
        let row = |rng: &mut Rng| (0..staves).map(|_| if rng.bool() { 'X' } else { '.' }).collect::<String>();
        let rows: Vec<String> = (0..rows).map(|_| format!("\"{}\"", row(&mut self.rng))).collect();
        format!("[{}]", rows.join(", "))
    }

    /// A mould whose wall widens, narrows, closes, lies level or turns back.
    pub(crate) fn mould(&mut self) -> String {
        let (base, height) = if self.chance(self.usual) {
            (self.within(50.0, 400.0), self.within(25.0, 400.0))
        } else {
            (self.within(0.05, 5000.0), self.within(0.05, 5000.0))
        };
        let rim = base * [1.0, 1.3, 2.0, 0.8, 0.5, 0.1, 1e-4][self.rng.usize(..7)];
        let rim = rim.clamp(0.05, 5000.0);
        let height = if self.chance(0.1) { self.within(0.05, 5.0) } else { height };
        if self.rng.bool() {
            let side = ["cone", "bowl", "straight"][self.rng.usize(..3)];
            let base = millimetres(base);
            return format!(
                "{{ base = {base}, rim = {}, height = {}, side = \"{side}\" }}",
                if side == "straight" { base.clone() } else { millimetres(rim) },
                millimetres(height)
            );
        }
        let count = if self.chance(0.02) { 500 } else { self.rng.usize(2..9) };
        let turns_back = self.rng.bool();
        let places = (0..count).map(|number| {
            let share = number as f64 / (count - 1) as f64;
            let even = base + (rim - base) * share;
            let girth = if turns_back && number % 2 == 1 { even * self.within(0.01, 3.0) } else { even };
            let girth = (girth * std::f64::consts::PI).clamp(0.05, 5000.0);
            format!("[\"{:.4} mm\", {}]", height.max(count as f64 * 0.06) * share, millimetres(girth))
        });
        let places: Vec<String> = places.collect();
        format!("{{ girths = [{}] }}", places.join(", "))
    }
}

fn millimetres(length: f64) -> String {
    format!("\"{length:.3} mm\"")
}
