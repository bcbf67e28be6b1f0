//! Who asks: the machine at the other end of a connection.

use std::convert::Infallible;
use std::net::{IpAddr, Ipv4Addr};

use axum::extract::FromRequestParts;
use axum::http::Extensions;
use axum::http::request::Parts;

/// A guest, known by the address of its machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Guest(pub(crate) IpAddr);

impl Guest {
    /// The guest that the server noted with the request.
    pub(crate) fn of(extensions: &Extensions) -> Self {
        extensions.get().copied().unwrap_or(Self(Ipv4Addr::UNSPECIFIED.into()))
    }
}

impl<S: Send + Sync> FromRequestParts<S> for Guest {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Self::of(&parts.extensions))
    }
}
