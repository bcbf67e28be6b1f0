//! The log of what was made.

use basket::Length;
use basket::message::Message;
use basket::pattern::{StepKind, Word};
use planning::records::Record;
use rusqlite::{OptionalExtension, Row, Transaction, named_params};

use crate::fault::Fault;
use crate::store::Store;

impl Store {
    /// Writes makings down and answers with their numbers. A number that was given once is never given again.
    ///
    /// # Errors
    /// [`Fault::Refused`] for a making of no pattern; then none of them is written down.
    pub fn log(&mut self, records: &[Record]) -> Result<Vec<u32>, Fault> {
        let work = self.work()?;
        let numbers = records.iter().map(|record| put(&work, record, None)).collect::<Result<_, _>>()?;
        work.commit()?;
        Ok(numbers)
    }

    /// All makings, by number.
    ///
    /// # Errors
    /// What the database says.
    pub fn records(&self) -> Result<Vec<Record>, Fault> {
        let mut query = self.connection.prepare_cached("SELECT * FROM records ORDER BY number")?;
        let mut records: Vec<Record> = query.query_map([], read)?.collect::<Result<_, _>>()?;
        let mut minutes = self
            .connection
            .prepare_cached("SELECT step, minutes FROM record_minutes WHERE record = ?1 ORDER BY step")?;
        let mut photos = self
            .connection
            .prepare_cached("SELECT file FROM record_photos WHERE record = ?1 ORDER BY place")?;
        for record in &mut records {
            let took = |row: &Row| Ok((row.get::<_, String>(0)?, row.get::<_, f64>(1)?));
            let steps: Vec<(String, f64)> =
                minutes.query_map([record.number], took)?.collect::<Result<_, _>>()?;
            let kind = |word: &str| StepKind::ALL.iter().find(|kind| kind.word() == word).copied();
            record.minutes =
                steps.iter().filter_map(|(word, minutes)| Some((kind(word)?, *minutes))).collect();
            record.photos = photos.query_map([record.number], |row| row.get(0))?.collect::<Result<_, _>>()?;
        }
        Ok(records)
    }

    /// The highest number that a making was given, also of those that were forgotten.
    pub(crate) fn last_record(&self) -> Result<u32, Fault> {
        let query = "SELECT seq FROM sqlite_sequence WHERE name = 'records'";
        Ok(self.connection.query_row(query, [], |row| row.get(0)).optional()?.unwrap_or(0))
    }

    /// One making.
    ///
    /// # Errors
    /// [`Fault::Unknown`] where none has this number.
    pub fn record(&self, number: u32) -> Result<Record, Fault> {
        let found = self.records()?.into_iter().find(|record| record.number == number);
        found.ok_or_else(|| Fault::Unknown { what: "record", name: number.to_string() })
    }

    /// Forgets makings for good; their bytes are written over in the file. Answers how many there were.
    ///
    /// # Errors
    /// What the database says; then all of them are still there.
    pub fn forget(&mut self, numbers: &[u32]) -> Result<usize, Fault> {
        self.connection.pragma_update_and_check(None, "secure_delete", true, |_| Ok(()))?;
        let work = self.work()?;
        let mut gone = 0;
        for number in numbers {
            gone += work.execute("DELETE FROM records WHERE number = ?1", [number])?;
        }
        work.commit()?;
        // What the log of changes still holds goes as well.
        self.connection.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
        Ok(gone)
    }
}

/// Gives the next making a number above this one.
pub(crate) fn go_on_after(work: &Transaction, number: u32) -> Result<(), Fault> {
    let set = "UPDATE sqlite_sequence SET seq = max(seq, ?1) WHERE name = 'records'";
    if number > 0 && work.execute(set, [number])? == 0 {
        work.execute("INSERT INTO sqlite_sequence (name, seq) VALUES ('records', ?1)", [number])?;
    }
    Ok(())
}

/// Writes one down under a number of its own, or under the next one.
pub(crate) fn put(work: &Transaction, record: &Record, number: Option<u32>) -> Result<u32, Fault> {
    if record.pattern.trim().is_empty() {
        return Err(Fault::cannot("workshop-cannot-unnamed-record"));
    }
    if let Some(number) = number {
        let taken =
            work.query_row("SELECT 1 FROM records WHERE number = ?1", [number], |_| Ok(())).optional()?;
        if taken.is_some() {
            return Err(Fault::Refused(Message::new("workshop-cannot-two-records").with("number", number)));
        }
    }
    let mm = |length: Option<Length>| length.map(Length::to_mm);
    work.execute(
        "INSERT INTO records VALUES (:number, :pattern, :version, :made, :who, :learner, :weaver, :rows, :wet, \
         :dry, :girth_wet, :girth_dry, :staves, :spoilt, :wood, :went_wrong)",
        named_params! {
            ":number": number,
            ":pattern": record.pattern,
            ":version": record.version,
            ":made": record.made.map(|day| day.to_string()),
            ":who": record.who,
            ":learner": record.learner,
            ":weaver": mm(record.weaver),
            ":rows": record.rows,
            ":wet": mm(record.wet),
            ":dry": mm(record.dry),
            ":girth_wet": mm(record.girth_wet),
            ":girth_dry": mm(record.girth_dry),
            ":staves": record.staves.map(|(staves, _)| staves),
            ":spoilt": record.staves.map_or(0, |(_, spoilt)| spoilt),
            ":wood": record.wood,
            ":went_wrong": record.went_wrong,
        },
    )?;
    let id = work.last_insert_rowid();
    for (kind, minutes) in &record.minutes {
        work.execute("INSERT INTO record_minutes VALUES (?1, ?2, ?3)", (id, kind.word(), minutes))?;
    }
    for (place, file) in record.photos.iter().enumerate() {
        work.execute("INSERT INTO record_photos VALUES (?1, ?2, ?3)", (id, place as i64, file))?;
    }
    u32::try_from(id).map_err(|_| Fault::cannot("workshop-cannot-more-records"))
}

fn read(row: &Row) -> rusqlite::Result<Record> {
    let length = |column: &str| Ok::<_, rusqlite::Error>(row.get::<_, Option<f64>>(column)?.map(Length::mm));
    let made: Option<String> = row.get("made")?;
    let (staves, spoilt): (Option<u32>, u32) = (row.get("staves")?, row.get("spoilt")?);
    Ok(Record {
        number: row.get("number")?,
        pattern: row.get("pattern")?,
        version: row.get("version")?,
        made: made.and_then(|day| day.parse().ok()),
        who: row.get("who")?,
        learner: row.get("learner")?,
        minutes: Vec::new(),
        weaver: length("weaver_mm")?,
        rows: row.get("rows")?,
        wet: length("wet_mm")?,
        dry: length("dry_mm")?,
        girth_wet: length("girth_wet_mm")?,
        girth_dry: length("girth_dry_mm")?,
        staves: staves.map(|staves| (staves, spoilt)),
        wood: row.get("wood")?,
        went_wrong: row.get("went_wrong")?,
        photos: Vec::new(),
    })
}
