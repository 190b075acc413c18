"""Verbs of bodily work, one form a word: `bot/parser/work.py` reads them with their objects.
Written for this project, from memory."""

# ruff: noqa: SIM905 - word sets read best as one string

from typing import Final

from bot.parser.vocabulary import packed

#: Work of the hands on things, food among them: with a length of time it is an activity
#: (`pounded yam for 30 min`), the verb alone for what no phrase of the activities holds.
WORK: Final = packed(
    """
    assembled assembling bagged bagging baled baling barrowed bathed bathing battered branded
    branding brushed brushing building built bundled bundling caddied calved carried carrying
    carted carting chased chasing chiselled chopped chopping cleaned cleaning cleared clearing
    climbed climbing clipped clipping coached coaching collected collecting coppiced cranked
    crocheted crutched cut cycled cycling danced dancing decorated decorating delivered
    delivering demolished demolishing digging dipped dismantled dismantling docked dragged
    dragging dredged dredging drenched drenching dried drilled drilling drummed drumming
    drying dug dusted dusting erected excavated fed feeding fetched fetching filleted
    filleting fished fishing fixed fixing flailed folded folding forked forking gathered
    gathering gleaned grafted grated grinding groomed grooming ground gutted gutting hacked
    hammered hammering hanging harvested harvesting hauled hauling hawked hawking heaved
    heaving hefted herded herding hewed hewn hitched hoed hoeing hoisted hoisting hoovered
    hoovering hosed hosing hung husked husking ironed ironing juggled jumped jumping kicked
    kicking kneaded kneading knelt laid lambed landscaped laying lifted lifting loaded loading
    lugged lugging lunged marched marching mended mending milked milking minded mopped mopping
    mortared moved moving mulched mulching mustered mustering netted nursed packed packing
    paddled painted painting paved paving pedalled peeled peeling penned picked picking planed
    planted planting plastered plastering played playing ploughed ploughing plowed plucked
    poled polished polishing potted potting pounded pounding practiced practicing practised
    practising pressed pruned pruning pulled pulling punted pushed pushing raked raking ran
    reaped reaping refereed repaired repairing riding rinsed rode rolled rolling roofed rowed
    rowing running saddled sailed sailing sanded sanding sawed sawing sawn scoured scraped
    scraping scrubbed scrubbing scythed selling served serving sewed sewing sewn shampooed
    sheared shearing shelled shelling shelved shelving shifted shifting shopped shopping shoveled shovelled
    shovelling shucked shucking sieved sieving sifted skinned skipped skippered slashed
    slashing slung smashed sold sorted sorting sowed sowing spaded split splitting sprayed
    spraying spread spreading spun squeegeed stacked stacking staked standing steered stirred
    stirring stocked stocking stomped stood stripped strode stuccoed swabbed swam sweeping
    swept tamped tapped tapping taught teaching tended tending thatched thatching threshed
    threshing throwing tidied tidying tied tiled tilled tilling toted towed towing trained
    transplanted transplanting trawled trekked trimmed trimming trod trolled trundled tugged
    turfed turned umpired unloaded unpacked unpacking uprooted vacuumed vacuuming vaulted
    vended vending walked walking trabaje trabajamos lave lavamos limpie limpiamos barri barrimos trapee
    cargue cargamos descargue pinte pintamos pode cave cavamos sembre sembramos plante regue ordene aspire
    planche amase coseche cosechamos pele desgrane empuje empujamos levante movimos arregle repare fregue
    sacudi acomode reparti lije construi hache raje podamos martille cosi walloped wallpapered washed washing watered watering weaving
    weeded weeding wedged wedging welded welding wheelbarrowed wheeled wheeling whitewashed winnowed
    winnowing wiped wiping wired worked working wove wrung yanked yoked
    """.split()
)

#: Work of field and stable, and of the building trades: an activity without a length too, whatever
#: it was done to, food among it (`planted potatoes`).
FIELD: Final = frozenset(
    """
    baled cemented concreted crutched drenched dug fenced harvested herded hoed lambed landscaped
    mended milked mowed mown mucked mulched mustered netted paved plastered ploughed plowed pruned
    raked reaped replanted roofed scythed sheared shingled shore sowed sown strimmed thatched
    threshed tiled tilled transplanted turfed weeded welded winnowed planted
    """.split()
)

#: Other work, an activity without a length where it was done to one thing or to so many (`painted
#: two rooms`, `scrubbed the tub`; `polished rice` and `loaded fries` are eaten).
TOIL: Final = frozenset(
    """
    barrowed bathed carried carted cemented chainsawed chased cleaned decluttered demolished
    dismantled dragged dusted erected groomed grouted hammered hauled heaved hoisted hoovered hosed
    ironed loaded lugged moved mopped painted polished pushed rebuilt repainted repaired restacked
    rewired saddled sanded sawed scoured scrubbed shoveled shovelled slashed stacked stripped swabbed swept
    tidied trimmed unloaded unpacked uprooted vacuumed varnished wallpapered washed wheeled whitewashed
    """.split()
)

#: Games that are spelled as food is: with a length, at the start of a clause, they were played.
GAMES_OR_FOOD: Final = frozenset(
    "squash poi bowls polo skittles fives pool rounders ironing painting tiling plastering roofing hunting crabbing foraging sprints marathon plank kayak canoe surf dusting laundry".split()
)

#: What is done or played sitting or lying: no activity, however long.
SEATED: Final = frozenset(
    """
    homework crossword crosswords puzzle puzzles jigsaw jigsaws sudoku taxes accounts paperwork admin emails
    email exam exams test tests course courses reading writing sewing knitting crochet nothing lessons lesson
    studying study studies cards card chess draughts checkers bingo ludo dominoes domino scrabble monopoly
    mahjong carrom backgammon poker bridge solitaire xbox playstation nintendo games game video computer online
    phone candy lotto lottery lotteries pools slots piano guitar violin music records organ trumpet flute
    keyboard ukulele harmonica radio tv telly fasting rest resting nap naps meditation meditating meditated
    breathing scan scans mri xray dialysis shift overtime shifts call calls zoom meeting meetings interview
    hair nails makeup nothing time sugar test fast driving bookkeeping tareas cartas ajedrez domino loteria
    bingo cuentas nada siesta tarea guitarra videojuegos naipes bowel
    """.split()
)
