"""English words that are no slip of the finger, though they are a letter away from a word that the
reader looks for: `campus` is no mushroom, `corner` is no running, `cancer` does not cancel.

Common words of English (found with the wordfreq library's lists of common words), of which the
reader would take another; a real word that is a likely slip all the same (`launch` for lunch,
`swearing` for a sign) is left out.
"""

# ruff: noqa: SIM905 - word sets read best as one string

from typing import Final

from bot.parser.vocabulary import packed

REAL_WORDS: Final = packed(
    """
    actor actors actual advance advances advises agent ahmad aiding airing alberta algeria alias
    alice alicia alike altar americans anchors answers apart apologise appeals applies arbor
    arches archive ardent areas arena arenas arises armor arose aroused arrests asher ashes
    ashore aspen aspiring assure atlas attach attacks averaged aware backed backing backs bailed
    bailey baking balanced balances bangs banks banquet barbara barbed barber barker barking
    barney baron barred barrel barren barrier barring barry basel basket bathrooms batter beams
    bearing beast beasts begging behaviors behaviours beings bella bells belts bench bends
    berger betting bianca bicycles bieber biker bikes bikini billie billy binds biting bland
    blast bleach bleak blinds blitz bloated blocked blocking blond blonde bloom blush boast
    boating boats boeing bogus boiling boils bolts bonds bonus boring bosch botany bothers bowed
    bowler boxer boxers brady brains brake braking branch brand brands braun breach breadth
    breaks breaths breeds breeze brian brick bride brides briggs brink brock broker brooke
    browne bucket buffer build buildings bully burgess burglar buried burner buster butler cable
    cache cairo caller calming camels cameo cameron camping camps campus cancer canine cannes
    cannon cares carlo carlos carrie carrier carries carts carve carver casing casino castle
    catchy ceased ceilings chain champion champs changer changes chanting chants chapman charms
    chats cheat cheats cheek chefs chemical chennai chill chills chilly choir choke chopper
    chords chorus chose chuck cindy circle circuits clair clamp clans clare clark clash classy
    claus clause cleaner cleansing clearer clears clippers clone closed closer closes closet
    cloud clouds coarse coding collage colombia combat comet comey comin competed completes
    compounds concentrated cones confession connie conscience console constance consume
    contacted contacts contest contests contract contracting controls cooke copied coping cores
    corner corona corps corrections corridors cortex couch county coupe coupled couples courses
    court cover coveted cracking cranes crank crashes craze creeps crest crises cropped crows
    crush crushed currents curse cutler cycles daisy damascus damon dancer dances dante daring
    dating dawson debit decor demos dense deported derive deserts desperate destroyer destroys
    devil dining dinners dipping discord disney diver dives divine donor doping doris downloads
    doyle drafting drawings driven drives drying dustin eater eaton edged eighth elephants
    elites emergence emergencies emery entire entirety expert exporter exports extras extremes
    faked fallon fanny farther faster feather feeds feelings fences fibers fibre fight fights
    filed filing filling finch finder finer finishes fiona firing fisher fittings flame flaming
    flare flattering flawed flint flood floods flora fluid folly forge forged forgets forming
    forth fragile framed frames framing franco fright fuels funky gallon gangs garde gardener
    gardens gases gettin gloria golfer gotham grabs graded grades grail grains granite grasp
    graves greats greeks greene greet grips gross grounds gupta gutter hacker hamas hamlet
    handing handy hangs hansen happen harding hardy haste hasty hating haven headaches header
    heads healed healing healy heard hearings hears hearty heated heating heaven heavens herman
    highlight hired hires hiring historian historic historical hodges holds holmes homes honda
    hooks hopes horribly housed households hovering humour hungary hunter hunting hurley hyped
    ignored ignores impression increases incredible infect infected infection inform informed
    informs injections insect insects insider jolly journals judas juicy jumper kaplan keller
    killed killings kitchens kittens kneeling known kumar lagoon lagos lakers lakes lamar lanka
    larger larry lasers latter lavish layers laying leading leads leases lecture lectures length
    lengthy letter lever liking limited linen liners lining liquid listed listing lists loaned
    loans locks logan loops lords loser losers losses loving lowry lungs luther lynch macro
    madden maiden maine major maker makers males manager manages mandate mandela manila manitoba
    manor mantra mapped mapping marches marcos marina mariners mario marion marital marked
    markets marking maroon marry marsh marta martha martian massage matched matching mateo
    mating mature means median mediation medic medicinal medina meditation mercy merit merits
    meteor mighty miller milling milton mined miranda misled misses mistaken mistakes mitch
    mixer mixes moaning mocked mocking modules moments monster monty mormon moron morrow mortal
    morton mosques motto mountains mourning mouths movements moves muster nadal nadia nascar
    nearby neatly needless needy nerds nerve newer niche nigel nightmare norman nothin noting
    novel numerous oceans oliver olivia openings orion otter outcomes outsider packing painter
    paintings paints pairing pairs paisley palace palate palmer palms pamela panda pandora panel
    panels panties pants papal parades paralysis pardon parking parties parting partners patched
    patches patel paved paving paying peaks pearce pearls peasant pedro peers penal performances
    peril perks perry pests peter petty phased phones phony pictured pictures piles pines
    pirates pisses placed places placing plains plane planes planets plank plans plated player
    pleases pointed pointing poison poker polling polls ponder poole pores porto posed positives
    postage poster posters posture potter practices practise prayed praying precious prescribed
    prescriptions presents pressured pressures preston prevent pride prime printed printing
    prints privy prize programmed programmer programmes programs projects promoting prone
    property prosper protect prove puerto pulls pulses purposes pushes putin qaeda query quest
    quincy quinn quits quota quote rabbi rabbits raced racer racket racks radios raided rained
    raising rally ramon ranges ranging ransom raped rapes rapids raping rates ratio razor
    reached reaching reacts realm realty reasons recalls reckon recognised recognized recognizes
    recorder recover reefs refuge regent registry rehabilitation reilly relay relies relying
    remainder remedies remembers reminded reminds remote removes repeal repealed repeats repent
    repetition replied reporter reports repost resent reservoirs resort responded responds
    responses resumes retina reuse reward rider riders rights rigid rises risking rivera robber
    rocked rocker rockets rogue roller rollins roofs rouge routed rover rovers rubbed ruining
    rumble sachs sacked sacred saharan sailor sails salem sales saline saloon salts salute
    samson sandra sands sandy santos sapphire satan satin saving saxon scaled scare scares scars
    scenes schemes schools scored scores scots scouts scrape scraps screens scroll scrolling
    scrolls sealed seams sears secure seeking seeks seeming seized sells selves semen sensation
    sensed senses sensing sentenced sentences sessions severed shack shade shades shale shame
    shaming shane shape shapes shaping shaving sheen shiny shipped shipping ships shitting
    shitty shock shootings shore shores shorts shout shouting shouts shuffle sicily sighs sights
    silly silva sings sinking sinks siren sirens sites sized skater skates skewed skies skill
    skipper slamming slapped slapping slate slated slave sleek slick slide slides slight sling
    slots slowing slums sluts smack smelly smiled smiles smiley smokes smooth smoothly snakes
    snapped sneak sneaking sniff socks soooo sound space spaces spacex spanning spans spared
    spear spears spelled spelling spending spiders spies spikes spill spills spinal spine spirit
    spitting splits springs sprinkle sprung spurred spurs spying squads squared squat stacey
    stack stacks stacy staffing staging stain stains stake stakes stale stalin stalking
    standings staple staples stare stared stares staring stark starr starred starring starter
    startled starve stated staten static stating stationery statistic steals steep stein steph
    steroid steven sticking sting stink stocked stocking stoke stones stool stores storey
    stories storm story stove strand strands stranger strap straps streaks strengths stride
    strides strife striker strikes stripe striped strive strokes struck struggled subscriptions
    sucking sucks suing sultan summarized summers supply suppose supreme surfer swear sweater
    sweeps swell swine swings swore sworn swung syllabus symptom systems tables tales talked
    talkin tammy tampa tanker tanks tanning tanya taped tapes tasked tasks tasted tasting taxes
    taxing temper temples tempo tends tents terra thanked thanking theme thine thinker thinkers
    thinks thorn thorough threat threats throats throws tides tights tiles timed timer timmy
    tires toilets toledo tommy tongues torch tories torres tough towing toyota traced tracey
    tract tracy trade trailer trailing trainee trainers trance traps treaty treble trendy trevor
    trick tries triple troubled trough truce trucks trunk tuned tuning tunnels turbo turner
    twitch tying types updated updates uploaded uploading usable vanish vargas varies vegas
    vents venus verses videos villages visions vivid voiced voices volvo wager waiter wakes
    wales walkers walled wally walter walters wanda wards washer washes wasted wasting waved
    waving weaken weakened weakening weddings weeping weirdo welding wells wheeler wholly whore
    whose wicket widow widows wills winged wished wishing wonder wondered woods woody wording
    worker workings workouts worlds wound woven wrestler wright wrinkles writings wrongs
    zeppelin
    """.split()
)
