//! The forms of call in the C header: `d` a double, `i` an int, `p` a pointer, `v` nothing.
//!
//! Made from the header: run `cargo run -p overslab-tests`.

super::c_library::signatures! {
    ">i": > i;
    "ddddpip>i": d d d d p i p > i;
    "ddddpppi>i": d d d d p p p i > i;
    "ddddpppppi>i": d d d d p p p p p i > i;
    "dddpip>i": d d d p i p > i;
    "dddpppi>i": d d d p p p i > i;
    "dddppppi>i": d d d p p p p i > i;
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
    "pdpipip>i": p d p i p i p > i;
    "pdpippipi>p": p d p i p p i p i > p;
    "pi>i": p i > i;
    "piiipippi>i": p i i i p i p p i > i;
    "piipipi>i": p i i p i p i > i;
    "pipip>i": p i p i p > i;
    "pipipip>i": p i p i p i p > i;
    "pipipipipi>i": p i p i p i p i p i > i;
    "pipipippi>i": p i p i p i p p i > i;
    "pipippi>i": p i p i p p i > i;
    "pipippipi>p": p i p i p p i p i > p;
    "pippi>i": p i p p i > i;
    "pippi>p": p i p p i > p;
    "pippipppippi>i": p i p p i p p p i p p i > i;
    "ppiddpipip>i": p p i d d p i p i p > i;
    "ppiddpippipi>p": p p i d d p i p p i p i > p;
    "ppipi>i": p p i p i > i;
    "ppipip>i": p p i p i p > i;
    "ppipipiddpipip>i": p p i p i p i d d p i p i p > i;
    "ppipipiddpippipi>p": p p i p i p i d d p i p p i p i > p;
    "ppipipip>i": p p i p i p i p > i;
    "ppipipipi>i": p p i p i p i p i > i;
    "ppipipipipip>i": p p i p i p i p i p i p > i;
    "ppipipipippipi>p": p p i p i p i p i p p i p i > p;
    "ppipippipi>p": p p i p i p p i p i > p;
    "ppippi>i": p p i p p i > i;
    "ppippipi>p": p p i p p i p i > p;
    "pppipip>i": p p p i p i p > i;
    "pppipipip>i": p p p i p i p i p > i;
    "pppipippipi>p": p p p i p i p p i p i > p;
    "pppippipi>p": p p p i p p i p i > p;
    "ppppipip>i": p p p p i p i p > i;
    "ppppipipip>i": p p p p i p i p i p > i;
    "ppppipipipi>i": p p p p i p i p i p i > i;
    "ppppipipipip>i": p p p p i p i p i p i p > i;
    "ppppipipippipi>p": p p p p i p i p i p p i p i > p;
    "ppppipippipi>p": p p p p i p i p p i p i > p;
    "ppppippi>i": p p p p i p p i > i;
    "pppppippi>i": p p p p p i p p i > i;
    "ppppppippi>i": p p p p p p i p p i > i;
    "pppppppippi>i": p p p p p p p i p p i > i;
    "ppppppppippi>i": p p p p p p p p i p p i > i;
}
