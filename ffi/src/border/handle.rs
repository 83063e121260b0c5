//! What the library's own pointers point to.
//!
//! C sees one opaque type per record and one for answers; behind each lies the same Rust type with a tag, so that a pointer
//! of the wrong kind, which a caller without C's types can pass, is refused by name instead of read as something else.

use super::guard::{internal, null, without_panic};
use overslab::failure::{Code, Failure, Result};
use overslab::operation::{Answer, Operation, RecordType, Value};
use std::any::Any;
use std::sync::{Arc, OnceLock};

/// A record over the border.
pub(crate) type Shared = Arc<dyn Any + Send + Sync>;

/// What a pointer of the library points to.
#[derive(Debug)]
pub(crate) enum Handle {
    /// A record.
    Record(Record),
    /// The answer of that operation.
    Answer(&'static Operation, Answer),
}

/// A record of a type, and its fields once they were asked for.
#[derive(Debug)]
pub(crate) struct Record {
    kind: &'static RecordType,
    shared: Shared,
    fields: OnceLock<Vec<Value>>,
}

impl Record {
    /// The record in a value.
    ///
    /// # Errors
    /// `INTERNAL` where it is none of that type.
    pub(super) fn new(kind: &'static RecordType, shared: Shared) -> Result<Self> {
        let fields = OnceLock::new();
        if (kind.is)(shared.as_ref()) { Ok(Self { kind, shared, fields }) } else { Err(internal()) }
    }

    /// What lies behind it.
    pub(super) fn shared(&self) -> Shared {
        Arc::clone(&self.shared)
    }

    /// Its fields, read once.
    pub(super) fn fields(&self) -> &[Value] {
        self.fields.get_or_init(|| (self.kind.get)(self.shared.as_ref()).unwrap_or_default())
    }

    /// Its canonical JSON.
    ///
    /// # Errors
    /// `INTERNAL`.
    pub(super) fn json(&self) -> Result<String> {
        (self.kind.to_json)(self.shared.as_ref()).map(|json| json.to_string()).ok_or_else(internal)
    }
}

impl Handle {
    /// A pointer to it, which `free` takes back.
    pub(super) fn into_pointer<Opaque>(self) -> *mut Opaque {
        Box::into_raw(Box::new(self)).cast()
    }

    fn mismatch(&self, path: &str, allowed: &str) -> Box<Failure> {
        let given = match self {
            Self::Record(record) => record.kind.name,
            Self::Answer(..) => "answer",
        };
        Failure::new(Code::KindMismatch, path)
            .written(format!("ovs_{given}"))
            .allowed(format!("ovs_{allowed}"))
            .remedy("pass a pointer of this type")
    }
}

/// A pointer that the caller passes back, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Passed {
    path: &'static str,
    pointer: *const Handle,
}

#[expect(unsafe_code, reason = "reads what the library's own pointer points to")]
impl Passed {
    /// The pointer of an opaque C type; `path` is what failures call it.
    pub(crate) const fn new<Opaque>(path: &'static str, pointer: *const Opaque) -> Self {
        Self { path, pointer: pointer.cast() }
    }

    /// Whether it is null.
    pub(super) const fn is_null(self) -> bool {
        self.pointer.is_null()
    }

    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    unsafe fn get<'a>(self) -> Result<&'a Handle> {
        // SAFETY: as this function's.
        unsafe { self.pointer.as_ref() }.ok_or_else(|| null(self.path))
    }

    /// The record of that type.
    ///
    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    ///
    /// # Errors
    /// `NULL_POINTER`, `KIND_MISMATCH`.
    pub(super) unsafe fn record<'a>(self, kind: &'static RecordType) -> Result<&'a Record> {
        // SAFETY: as this function's.
        match unsafe { self.get() }? {
            Handle::Record(record) if std::ptr::eq(record.kind, kind) => Ok(record),
            other => Err(other.mismatch(self.path, kind.name)),
        }
    }

    /// The answer.
    ///
    /// # Safety
    /// The pointer is null or came from the library and was not freed.
    ///
    /// # Errors
    /// `NULL_POINTER`, `KIND_MISMATCH`.
    pub(super) unsafe fn answer<'a>(self) -> Result<(&'static Operation, &'a Answer)> {
        // SAFETY: as this function's.
        match unsafe { self.get() }? {
            Handle::Answer(row, answer) => Ok((row, answer)),
            other => Err(other.mismatch(self.path, "answer")),
        }
    }
}

/// Frees what the library made; null is nothing.
///
/// # Safety
/// The pointer is null or came from the library and was not freed.
#[expect(unsafe_code, reason = "takes back what the library made")]
pub(crate) unsafe fn free<Opaque>(pointer: *mut Opaque) {
    if pointer.is_null() {
        return;
    }
    // SAFETY: `into_pointer` made it, and the caller gives it up.
    let owned = unsafe { Box::from_raw(pointer.cast::<Handle>()) };
    let _ = without_panic(move || {
        drop(owned);
        Ok(())
    });
}
