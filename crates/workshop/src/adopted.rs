//! The hand that the workshop took up; none where it works with the usual one.

use planning::records::Adopted;
use rusqlite::OptionalExtension;

use crate::fault::Fault;
use crate::store::Store;

impl Store {
    /// The figures that were taken up; none for the usual ones.
    ///
    /// # Errors
    /// What the database says.
    pub fn adopted(&self) -> Result<Option<Adopted>, Fault> {
        let query = "SELECT figures FROM adopted WHERE place = 1";
        let text: Option<String> = self.connection.query_row(query, [], |row| row.get(0)).optional()?;
        let read = |text: String| toml::from_str(&text).map_err(|error| Fault::Other(error.to_string()));
        text.map(read).transpose()
    }

    /// Takes figures up in the place of earlier ones, or goes back to the usual ones.
    ///
    /// # Errors
    /// What the database says; then the earlier ones hold on.
    pub fn adopt(&mut self, figures: Option<&Adopted>) -> Result<(), Fault> {
        let text = figures.map(toml::to_string).transpose();
        let text = text.map_err(|error| Fault::Other(error.to_string()))?;
        let work = self.work()?;
        work.execute("DELETE FROM adopted", [])?;
        if let Some(text) = text {
            work.execute("INSERT INTO adopted VALUES (1, ?1)", [text])?;
        }
        Ok(work.commit()?)
    }
}
