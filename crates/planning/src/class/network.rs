//! Activities that wait for one another, and the longest way through them: the critical path.

use super::schedule::{Minute, Window};

/// What has to be done, and after what.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Activity {
    /// What must be over before it begins.
    pub after: Vec<Link>,
}

/// One thing that must be over before another begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Link {
    /// Its number in the network, from 0.
    pub activity: usize,
    /// Minutes to wait after its end.
    pub wait: Minute,
}

/// Activities, each with what it waits for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Network {
    activities: Vec<Activity>,
    /// Each after all that it waits for.
    order: Vec<usize>,
}

/// When each activity is done, and what decided that.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// The time of each.
    pub spans: Vec<Window>,
    /// Which other one each had to wait for the longest; none where it could begin at once.
    pub decided_by: Vec<Option<usize>>,
}

impl Network {
    /// A network; none where activities wait for each other in a circle, or for one that there is not.
    pub fn of(activities: Vec<Activity>) -> Option<Self> {
        let mut open: Vec<usize> = activities.iter().map(|activity| activity.after.len()).collect();
        let mut followers = vec![Vec::new(); activities.len()];
        for (number, activity) in activities.iter().enumerate() {
            for link in &activity.after {
                followers.get_mut(link.activity)?.push(number);
            }
        }
        let mut order: Vec<usize> = Vec::with_capacity(activities.len());
        order.extend((0..activities.len()).filter(|number| open.get(*number) == Some(&0)));
        let mut next = 0;
        while let Some(done) = order.get(next).copied() {
            next += 1;
            for follower in followers.get(done)? {
                let left = open.get_mut(*follower)?;
                *left -= 1;
                if *left == 0 {
                    order.push(*follower);
                }
            }
        }
        (order.len() == activities.len()).then_some(Self { activities, order })
    }

    /// Does everything as early as it can be done. `place` is asked for the time of an activity that may
    /// begin at a moment; none if it says none.
    pub fn run(&self, mut place: impl FnMut(usize, Minute) -> Option<Window>) -> Option<Run> {
        let nowhere = Window { from: Minute::MIN, to: Minute::MIN };
        let mut run = Run {
            spans: vec![nowhere; self.activities.len()],
            decided_by: vec![None; self.activities.len()],
        };
        for number in &self.order {
            let over = |link: &Link| {
                let to = run.spans.get(link.activity).map_or(Minute::MIN, |span| span.to);
                (to.saturating_add(link.wait), link.activity)
            };
            let latest = self.activities.get(*number)?.after.iter().map(over).max_by_key(|(over, _)| *over);
            *run.spans.get_mut(*number)? = place(*number, latest.map_or(Minute::MIN, |(over, _)| over))?;
            *run.decided_by.get_mut(*number)? = latest.map(|(_, activity)| activity);
        }
        Some(run)
    }
}

impl Run {
    /// When all is done.
    pub fn end(&self) -> Minute {
        self.spans.iter().map(|span| span.to).max().unwrap_or(Minute::MIN)
    }

    /// The activities that decide the end: the last one, what that waited for, and so on, in order of time.
    pub fn critical_path(&self) -> Vec<usize> {
        let last = self.spans.iter().enumerate().max_by_key(|(_, span)| span.to).map(|(number, _)| number);
        let before = |number: &usize| self.decided_by.get(*number).copied().flatten();
        let mut path: Vec<usize> = std::iter::successors(last, before).take(self.spans.len()).collect();
        path.reverse();
        path
    }
}

/// How long something takes, by three figures (Malcolm, Roseboom, Clark and Fazar 1959, "Application of a
/// technique for research and development program evaluation", Operations Research 7: PERT).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThreePoint {
    /// If all goes well.
    pub least: f64,
    /// Most likely.
    pub likely: f64,
    /// If much goes wrong.
    pub most: f64,
}

impl ThreePoint {
    /// The mean, `(a + 4m + b) / 6`.
    pub fn mean(&self) -> f64 {
        (self.least + 4.0 * self.likely + self.most) / 6.0
    }

    /// The variance, `((b − a) / 6)²`.
    pub fn variance(&self) -> f64 {
        ((self.most - self.least) / 6.0).powi(2)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The construction project of Hillier and Lieberman, "Introduction to Operations Research": what each
    /// of A to N waits for, its time, and its three figures.
    const PROJECT: [(&str, Minute, [f64; 3]); 14] = [
        ("", 2, [1.0, 2.0, 3.0]),
        ("A", 4, [2.0, 3.5, 8.0]),
        ("B", 10, [6.0, 9.0, 18.0]),
        ("C", 6, [4.0, 5.5, 10.0]),
        ("C", 4, [1.0, 4.5, 5.0]),
        ("E", 5, [4.0, 4.0, 10.0]),
        ("D", 7, [5.0, 6.5, 11.0]),
        ("EG", 9, [5.0, 8.0, 17.0]),
        ("C", 7, [3.0, 7.5, 9.0]),
        ("FI", 8, [3.0, 9.0, 9.0]),
        ("J", 4, [4.0, 4.0, 4.0]),
        ("J", 5, [1.0, 5.5, 7.0]),
        ("H", 2, [1.0, 2.0, 3.0]),
        ("KL", 6, [5.0, 5.5, 9.0]),
    ];

    fn project() -> Run {
        let link = |name: u8| Link { activity: usize::from(name - b'A'), wait: 0 };
        let activities = PROJECT.map(|(after, ..)| Activity { after: after.bytes().map(link).collect() });
        let network = Network::of(activities.to_vec()).expect("no circle");
        let run = network.run(|number, ready| {
            let from = ready.max(0);
            Some(Window { from, to: from + PROJECT[number].1 })
        });
        run.expect("time without end")
    }

    #[test]
    fn the_construction_project_takes_44_weeks() {
        let run = project();
        let path: String =
            run.critical_path().into_iter().map(|number| char::from(b'A' + number as u8)).collect();
        assert_eq!((run.end(), path.as_str()), (44, "ABCEFJLN"));
    }

    #[test]
    fn its_three_figures_give_the_books_mean_and_variance() {
        let points: Vec<ThreePoint> = project()
            .critical_path()
            .into_iter()
            .map(|number| PROJECT[number].2)
            .map(|[least, likely, most]| ThreePoint { least, likely, most })
            .collect();
        let mean: f64 = points.iter().map(ThreePoint::mean).sum();
        let variance: f64 = points.iter().map(ThreePoint::variance).sum();
        assert!((mean - 44.0).abs() < 1e-9 && (variance - 9.0).abs() < 1e-9, "{mean}, {variance}");
        // The book: P(done in 47 weeks) = 0.8413.
        let chance = crate::class::chance::normal_below((47.0 - mean) / variance.sqrt());
        assert!((chance - 0.8413).abs() < 5e-5, "{chance}");
    }

    #[test]
    fn a_circle_is_no_network() {
        let after = |activity| Activity { after: vec![Link { activity, wait: 0 }] };
        assert_eq!(Network::of(vec![after(1), after(0)]), None);
        assert_eq!(Network::of(vec![after(7)]), None);
    }
}
