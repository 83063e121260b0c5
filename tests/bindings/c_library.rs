//! The loaded C library and calls of its functions by name, with the arguments that the header says it takes.

use libloading::Library as Loaded;
use overslab_tests::c_header::{Header, Type};
use overslab_tests::generate::{header, root};
use std::ffi::{c_int, c_void};
use std::path::PathBuf;
use std::sync::OnceLock;

/// One argument of a call.
#[derive(Clone, Copy, Debug)]
pub(super) enum Arg {
    Double(f64),
    Int(c_int),
    Pointer(*mut c_void),
}

impl Arg {
    /// Null.
    pub(super) const NULL: Self = Self::Pointer(std::ptr::null_mut());

    pub(super) fn to<T>(place: &mut T) -> Self {
        Self::Pointer(std::ptr::from_mut(place).cast())
    }

    pub(super) fn list<T>(list: &mut [T]) -> Self {
        Self::Pointer(list.as_mut_ptr().cast())
    }

    pub(super) fn bytes(text: &[u8]) -> Self {
        Self::Pointer(text.as_ptr().cast_mut().cast())
    }

    pub(super) fn length<T>(list: &[T]) -> Self {
        Self::Int(c_int::try_from(list.len()).unwrap())
    }
}

/// What a call gave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Gives {
    Int(c_int),
    Pointer(*mut c_void),
    Nothing,
}

impl Gives {
    pub(super) fn status(self) -> c_int {
        match self {
            Self::Int(status) => status,
            other => panic!("no status but {other:?}"),
        }
    }

    pub(super) fn pointer(self) -> *mut c_void {
        match self {
            Self::Pointer(pointer) => pointer,
            other => panic!("no pointer but {other:?}"),
        }
    }
}

/// Arguments by name, in the order of the header.
pub(super) type Arguments = Vec<(String, Arg)>;

/// The library and what its header says.
pub(super) struct Library {
    loaded: Loaded,
    pub(super) header: Header,
}

/// The library that cargo built for the tests: it lies beside the test program.
pub(super) fn library() -> &'static Library {
    static LIBRARY: OnceLock<Library> = OnceLock::new();
    LIBRARY.get_or_init(|| {
        let path = library_path();
        #[expect(unsafe_code, reason = "the library runs no code when it is loaded")]
        // SAFETY: it is ours and has no initialisers of its own.
        let loaded =
            unsafe { Loaded::new(&path) }.unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let text = std::fs::read_to_string(root().join(header::SPECIMEN)).unwrap();
        Library { loaded, header: Header::read(&text) }
    })
}

pub(super) fn library_path() -> PathBuf {
    let program = std::env::current_exe().unwrap();
    program.parent().unwrap().join(libloading::library_filename("overslab_ffi"))
}

impl Library {
    /// Calls a function. The names must be those of the header, save a suffix that keeps them apart from other words.
    pub(super) fn call(&self, function: &str, given: &Arguments) -> Gives {
        let prototype =
            self.header.function(function).unwrap_or_else(|| panic!("the header has no {function}"));
        let names: Vec<&str> = prototype.arguments.iter().map(|argument| argument.name.as_str()).collect();
        let expected: Vec<&str> = given.iter().map(|(name, _)| name.as_str()).collect();
        assert_eq!(names.len(), expected.len(), "{function}: {names:?}, expected {expected:?}");
        for (argument, (expected, arg)) in prototype.arguments.iter().zip(given) {
            let name = argument.name.as_str();
            let plain = ["_out", "_value"].map(|apart| name.replacen(apart, "", 1));
            let same = name == expected || plain.iter().any(|plain| plain == expected);
            assert!(same, "{function}: {name}, expected {expected}");
            let letter = match arg {
                Arg::Double(_) => 'd',
                Arg::Int(_) => 'i',
                Arg::Pointer(_) => 'p',
            };
            assert_eq!(argument.kind.letter(), letter, "{function}: {name}");
        }
        let arguments: Vec<Arg> = given.iter().map(|(_, arg)| *arg).collect();
        let address = self.address(function);
        #[expect(unsafe_code, reason = "calls the loaded library")]
        // SAFETY: the form of the call is that of the header, which a test compares with the library's own declarations,
        // and the tests keep to the promises that the header asks for.
        unsafe {
            super::c_signatures::dispatch(&prototype.signature(), address, &arguments)
        }
    }

    fn address(&self, function: &str) -> *const c_void {
        #[expect(unsafe_code, reason = "looks up a symbol of the loaded library")]
        // SAFETY: the address is only used as that of a function of the header's form.
        let symbol = unsafe { self.loaded.get::<*const c_void>(function) };
        let stale = "another build may have replaced the library: `cargo clean -p overslab-ffi`";
        *symbol.unwrap_or_else(|error| panic!("{function}: {error}; {stale}"))
    }

    /// Whether the function's argument of that name may be changed by it.
    pub(super) fn is_output(kind: &Type) -> bool {
        matches!(kind, Type::Out(_))
    }
}

/// The types behind the letters of a signature.
macro_rules! letter_type {
    (d) => { f64 };
    (i) => { std::ffi::c_int };
    (p) => { *mut std::ffi::c_void };
    (v) => { () };
}

/// The next argument, of the type of its letter.
macro_rules! letter_value {
    (d, $next:expr) => {
        match $next {
            Some(super::c_library::Arg::Double(x)) => *x,
            other => panic!("{other:?}"),
        }
    };
    (i, $next:expr) => {
        match $next {
            Some(super::c_library::Arg::Int(x)) => *x,
            other => panic!("{other:?}"),
        }
    };
    (p, $next:expr) => {
        match $next {
            Some(super::c_library::Arg::Pointer(x)) => *x,
            other => panic!("{other:?}"),
        }
    };
}

/// What a call gave, by the letter of its type.
macro_rules! letter_gives {
    (i, $call:expr) => {
        super::c_library::Gives::Int($call)
    };
    (p, $call:expr) => {
        super::c_library::Gives::Pointer($call)
    };
    (v, $call:expr) => {{
        $call;
        super::c_library::Gives::Nothing
    }};
}

/// A function that calls an address by its signature.
macro_rules! signatures {
    ($($text:literal: $($letter:ident)* > $gives:ident;)+) => {
        #[expect(unsafe_code, reason = "calls the loaded library")]
        /// # Safety
        /// The address is that of a function of this form, and the arguments are what it asks for.
        pub(super) unsafe fn dispatch(
            signature: &str,
            address: *const std::ffi::c_void,
            arguments: &[super::c_library::Arg],
        ) -> super::c_library::Gives {
            use super::c_library::{letter_gives, letter_type, letter_value};
            match signature {
                $($text => {
                    type Form = unsafe extern "C" fn($(letter_type!($letter)),*) -> letter_type!($gives);
                    // SAFETY: as this function's.
                    let function = unsafe { std::mem::transmute::<*const std::ffi::c_void, Form>(address) };
                    #[allow(unused_mut, unused_variables, reason = "a form without arguments")]
                    let mut next = arguments.iter();
                    // SAFETY: as this function's.
                    letter_gives!($gives, unsafe { function($(letter_value!($letter, next.next())),*) })
                })+
                _ => panic!("{signature} is not listed: run `cargo run -p overslab-tests`"),
            }
        }
    };
}

pub(super) use {letter_gives, letter_type, letter_value, signatures};
