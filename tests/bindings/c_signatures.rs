//! The forms of call in the C header: `d` a double, `i` an int, `p` a pointer, `v` nothing.
//!
//! Made from the header: run `cargo run -p overslab-tests`.

super::c_library::signatures! {
    ">i": > i;
    "ddddpip>i": d d d d p i p > i;
    "ddddpppi>i": d d d d p p p i > i;
    "ddddpppppi>i": d d d d p p p p p i > i;
    "ddpip>i": d d p i p > i;
    "ddpppi>i": d d p p p i > i;
    "ddppppi>i": d d p p p p i > i;
    "diipip>i": d i i p i p > i;
    "diipipipppipip>i": d i i p i p i p p p i p i p > i;
    "diipipipppippipi>p": d i i p i p i p p p i p p i p i > p;
    "diipppppi>i": d i i p p p p p i > i;
    "dpipip>i": d p i p i p > i;
    "dpippipi>p": d p i p p i p i > p;
    "ipi>i": i p i > i;
    "p>v": p > v;
    "pi>i": p i > i;
    "piiipippi>i": p i i i p i p p i > i;
    "piipipi>i": p i i p i p i > i;
    "pipipip>i": p i p i p i p > i;
    "pipipippi>i": p i p i p i p p i > i;
    "pipippi>i": p i p i p p i > i;
    "pipippipi>p": p i p i p p i p i > p;
    "pippi>i": p i p p i > i;
    "pippi>p": p i p p i > p;
    "ppipi>i": p p i p i > i;
    "ppipip>i": p p i p i p > i;
    "ppipipipi>i": p p i p i p i p i > i;
    "ppippi>i": p p i p p i > i;
    "ppppippi>i": p p p p i p p i > i;
    "pppppippi>i": p p p p p i p p i > i;
    "ppppppippi>i": p p p p p p i p p i > i;
    "pppppppippi>i": p p p p p p p i p p i > i;
    "ppppppppippi>i": p p p p p p p p i p p i > i;
}
