//! The findings on the old slab, the worst word of each last.

use super::declare::findings;
use super::quick::QuickInput;
use crate::quantity::{Given, Length, Pressure, Share};

findings! {
    crack_width: CrackWidth, "width of the widest crack",
        ask "slip a card, then a coin, into the widest crack" {
        Clear = "none" "no cracks",
        Hairline = "hairline" "cracks are hairline, 0.01 in at most",
        Card = "card" "a card goes into the widest crack, 0.03 in",
        Coin = "coin" "a coin goes into the widest crack, 0.06 in",
        Wide = "wide" "the widest crack is wider than a coin",
    }
    crack_movement: CrackMovement, "whether the cracks move",
        ask "mark across the cracks, look again in another season or under a wheel" {
        Still = "still" "the cracks are still",
        Working = "working" "the cracks work",
        Unknown = "unknown" "nobody knows whether the cracks move",
    }
    crack_pattern: CrackPattern, "pattern of the cracks",
        ask "wet the slab, let it dry, and look at the cracks that stay dark" {
        Few = "few" "few cracks",
        Many = "many" "many cracks in a panel",
        Map = "map" "cracks like a map all over",
    }
    bar_cracks: BarCracks, "cracks along the bars in it",
        ask "find the bars with a detector, and look whether cracks or rust follow them" {
        Clear = "none" "no cracks along bars",
        Seen = "seen" "cracks follow the bars",
    }
    step: Step, "greatest step across a crack or a joint",
        ask "lay a straightedge across every crack and joint: a coin is 1/16 in, a pencil 1/4 in" {
        Clear = "none" "no step across a crack or a joint",
        Coin = "coin" "a step as thick as a coin, 1/16 in",
        Pencil = "pencil" "a step as thick as a pencil, 1/4 in",
        HalfInch = "half_inch" "a step of 1/4 to 1/2 in",
        More = "more" "a step of more than 1/2 in",
    }
    settlement: Settlement, "whether the slab has settled, and still does",
        ask "ask since when, look at walls and patches, and level it again after 3 to 6 months" {
        Clear = "none" "it has not settled",
        Dormant = "dormant" "it settled once and is at rest",
        Live = "live" "it is still settling",
        Unknown = "unknown" "nobody knows whether it still settles",
    }
    settlement_signs: SettlementSigns, "fresh signs of settling: sharp clean edges, a patch cracked again, a cracked wall above",
        ask "look for sharp clean edges, patches cracked again, cracks in the wall above" {
        Clear = "none" "no fresh sign of settling",
        Seen = "seen" "fresh signs of settling",
    }
    heave: Heave, "whether the slab has heaved, and still does",
        ask "ask about frost, roots and clay, and level it again in another season" {
        Clear = "none" "it has not heaved",
        Dormant = "dormant" "it heaved once and is at rest",
        Live = "live" "it is still heaving",
        Unknown = "unknown" "nobody knows whether it still heaves",
    }
    rocking: Rocking, "whether panels rock or pump under load",
        ask "walk and roll a load over joints and corners, look for water or mud that comes up" {
        Clear = "none" "nothing rocks",
        OnePlace = "one_place" "it rocks in one place",
        Widespread = "widespread" "it rocks or pumps in many places",
    }
    joints: Joints, "whether the joints move",
        ask "look for worn or broken joint edges, measure the joints cold and warm" {
        Still = "still" "joints are still, or there are none",
        Working = "working" "joints work",
        Unknown = "unknown" "nobody knows whether the joints move",
    }
    hollow: Hollow, "how much of it sounds hollow",
        ask "tap it with a hammer, ten taps to 100 ft2, and mark what sounds hollow" {
        Clear = "none" "the hammer rings everywhere",
        Spots = "spots" "it sounds hollow in spots, 5 % at most",
        ALot = "a_lot" "a lot of it sounds hollow",
    }
    drum: Drum, "whether it sounds like a drum over a wide area",
        ask "drop a bar on it here and there and listen for a drum" {
        No = "no" "nowhere does it sound like a drum",
        Yes = "yes" "it sounds like a drum over a wide area",
    }
    strength: Strength, "how hard the concrete is",
        ask "strike it with a hammer, scratch it with a screwdriver" {
        Rings = "rings" "it rings, and a screwdriver leaves no groove",
        Dull = "dull" "the hammer sounds dull",
        Gouges = "gouges" "a screwdriver gouges it",
    }
    scaling: Scaling, "depth of scaling",
        ask "measure the scaled spots under a straightedge" {
        Clear = "none" "it is not scaled",
        Light = "light" "the paste has scaled off, the stones stay",
        QuarterInch = "quarter_inch" "it is scaled to 1/4 in",
        Deep = "deep" "it is scaled deeper than 1/4 in",
    }
    spalling: Spalling, "whether pieces have broken out",
        ask "look along joints and cracks for broken edges" {
        Clear = "none" "no spalls",
        AtJoints = "at_joints" "joint edges are spalled",
        Widespread = "widespread" "it is spalled in many places",
    }
    popouts: Popouts, "pop-outs over single stones",
        ask "look for small cones broken out over a stone" {
        Clear = "none" "no pop-outs",
        Few = "few" "a few pop-outs",
        Many = "many" "many pop-outs",
    }
    durability_cracking: DurabilityCracking, "durability cracking: fine dark cracks along joints and edges, from stone that frost breaks",
        ask "look for fine dark cracks that follow joints and corners",
        taken Clear because "nothing of it was reported" {
        Clear = "none" "no durability cracking",
        Suspected = "suspected" "durability cracking is suspected",
        Seen = "seen" "durability cracking",
    }
    gel: Gel, "alkali-silica reaction: map cracks with a clear or white gel",
        ask "look for map cracks with gel, have a core looked at",
        taken Clear because "nothing of it was reported" {
        Clear = "none" "no gel",
        Suspected = "suspected" "alkali-silica gel is suspected",
        Seen = "seen" "alkali-silica gel",
    }
    contamination: Contamination, "oil and grease in the concrete",
        ask "drop water on it: where it stands in beads something is in the way" {
        Clear = "none" "no oil",
        Film = "film" "a film of oil",
        InDepth = "in_depth" "oil has gone in deep",
    }
    sealer: Sealer, "sealer or curing film on it",
        ask "drop water on it: bare concrete drinks it in a minute or two" {
        Clear = "none" "water soaks in",
        Present = "present" "a sealer or a curing film",
    }
    paint: Paint, "paint on it",
        ask "scrape a corner" {
        Clear = "none" "no paint",
        Present = "present" "paint",
    }
    covering: Covering, "old tile, sheet or adhesive on it",
        ask "look, and have a sample of anything old tested for asbestos" {
        Clear = "none" "no old covering or glue",
        Tested = "tested" "an old covering or glue, tested and free of asbestos",
        Untested = "untested" "an old covering or glue that nobody has tested",
    }
    moisture: Moisture, "what a sheet taped down overnight shows",
        ask "tape a clear sheet down overnight and look under it" {
        Dry = "dry" "it stays dry under a sheet",
        Dark = "dark" "it turns dark under a sheet",
        Drops = "drops" "drops stand under a sheet",
    }
    rests_on: RestsOn, "what the old slab rests on",
        ask "drill a hole and look" {
        Gravel = "gravel" "it rests on gravel",
        Ground = "ground" "it rests on firm ground",
        Fill = "fill" "it rests on fill",
        OldSlab = "old_slab" "it rests on another slab",
        Framing = "framing" "it rests on framing",
    }
    suspended: Suspended, "whether it spans free, with air under it",
        ask "look from below, find a crawl space or a cellar" {
        No = "no" "it lies on the ground",
        Yes = "yes" "it spans free",
        Unknown = "unknown" "nobody knows whether it spans",
    }
    below: Below, "what is under it",
        ask "ask the owner and the neighbours for cistern, septic tank, cellar, pit; where nobody knows, drill" {
        Drilled = "drilled" "drilled through: solid below",
        Nothing = "nothing" "nothing is known to be under it",
        Septic = "septic" "a septic tank is under it",
        Cistern = "cistern" "a cistern is under it",
        Cellar = "cellar" "a cellar is under it",
        Void = "void" "a void is under it",
        Unknown = "unknown" "nobody knows what is under it",
    }
    heating_pipes: HeatingPipes, "heating pipes in it",
        ask "look for a manifold, run the heating and look with a thermal camera" {
        Clear = "none" "no heating pipes",
        Present = "present" "heating pipes in the slab",
        Unknown = "unknown" "nobody knows of heating pipes",
    }
    tendons: Tendons, "stressed cables in it",
        ask "look at the slab's edge for round grout plugs, ask for drawings, have it scanned" {
        Clear = "none" "no stressed cables",
        Present = "present" "stressed cables in the slab",
        Unknown = "unknown" "nobody knows of stressed cables",
    }
    place: Place, "where it lies, and whether it freezes there wet",
        ask "indoors, outdoors, or outdoors where it freezes?" {
        Indoors = "indoors" "it lies under a roof",
        Outdoors = "outdoors" "it lies outdoors, without frost",
        OutdoorsFrost = "outdoors_frost" "it lies outdoors and it freezes there",
    }
    drainage: Drainage, "whether water between the slabs could run off below",
        ask "is there a drained layer with an open lower edge?" {
        Drained = "drained" "water below has a way out",
        NotDrained = "not_drained" "water below has no way out",
        Unknown = "unknown" "nobody knows whether water below has a way out",
    }
    old_thickness: OldThickness, "thickness of the old slab",
        ask "drill a 1/2 in hole, or dig at an edge",
        taken Full because "a nominal 4 in is 3 1/2 in: drill where it matters" {
        Full = "full" "it is 3 1/2 in thick or more",
        Thin = "thin" "it is thinner than 3 1/2 in",
        Shell = "shell" "it is thinner than 2 in, a crust",
        Unknown = "unknown" "nobody knows its thickness",
    }
    wet_use: WetUse, "whether the floor is wet in use",
        ask "is it hosed, washed, or wet for days?" {
        Dry = "dry" "the floor is dry in use",
        Wet = "wet" "the floor is wet in use, a wash bay",
    }
    load: Load, "the heaviest that stands or drives on it",
        ask "what is the heaviest that will stand or drive on it?" {
        Foot = "foot" "people only",
        Car = "car" "cars and pickups",
        Truck = "truck" "loaded trucks, tractors or forklifts",
        Jacks = "jacks" "jacks and stands under vehicles",
        LiftPosts = "lift_posts" "posts of a lift or a hoist are to stand on it",
    }
    agent: Agent, "the bonding coat wanted, for a bonded overlay",
        ask "what bonding coat is wanted?",
        taken Slurry because "cement slurry, scrubbed in" {
        Slurry = "slurry" "cement slurry, scrubbed in",
        Rated = "rated" "an agent that is rated for wet places",
        Clear = "none" "no bonding coat",
        Rewettable = "rewettable" "an agent that softens when it gets wet again",
    }
    room: Room, "the least thickness that the overlay has room for",
        ask "work out the new floor's heights",
        taken FourInches because "the heights of the new floor will tell" {
        FourInches = "four_in" "room for 4 in",
        ThreeInches = "three_in" "room for 3 in, not for 4",
        TwoInches = "two_in" "room for 2 in, not for 3",
        OneAndAHalf = "one_and_a_half_in" "room for 1 1/2 in, not for 2",
        ThreeQuarters = "three_quarters_in" "room for 3/4 in, not for 1 1/2",
        Less = "less" "less room than 3/4 in",
    }
}
