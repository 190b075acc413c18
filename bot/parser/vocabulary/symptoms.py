"""How it feels to be low, high or in danger, in the words that people use.

Rules of this list. A phrase must not fire on ordinary talk, so words such as `thirsty` stand
in `WEAK_SIGNS` and `fit` never alone. The longest phrase wins: `about to pass out` (low) holds
`pass out`, `low fat` (in `NOT_SYMPTOMS`) holds `low`. Where a phrase could be of two levels it
stands at the graver one. Whether a symptom is denied, over or somebody else's is the grammar's.

Sources: the low signs follow the patient leaflet and the high and emergency signs the pages
named in docs/word-lists.md; the everyday wordings are our own, from memory.
"""

from collections.abc import Mapping
from string import Template
from typing import Final

from bot.entries import Suggests
from bot.parser.vocabulary import Block, phrases

#: Parts that many phrases share, used as `$very`.
_SHARED: Final = {
    "very": """{very|vry|verry|vrey|v|unbearably|ridiculously|wicked|hella|hecka|bare|gey|pure|realy|rly|sooo|soooo|sooooo|soooooo|soo|really|so|super|too|mad|extra|extremely|terribly|awfully|dead|proper|fierce|ferocious|shocking|shockin|bone|wile|wild|fair|gasping|heaps|savage|lethal|fair|some|right|massively|insanely|mortal|desperate|well|real|awful|awfy|mighty
        unusually|incredibly|crazy|that|pretty|quite|always|constantly|still}""",
    "ever": """{all the time|all day|all night|all day long|constantly|a lot|alot|lots|loads|nonstop
        non-stop|every hour|every hr|every half hr|every {few|5|10|ten|15|20} minutes|every half hour|so much|too much
        so often|too often|often|more than usual|more than normal|like crazy|like mad|frequently
        again and again|over and over|again n again|over n over|everytime|every minute|nearly every hour
        every {10|15|20|30|40|45} {min|mins|minutes}}""",
    "him": """{him|her|them|mum|mom|dad|mama|papa|my {wife|husband|mother|father|son|daughter|partner|sister|brother}
        grandma|granny|grandpa|nan}""",
    "face": "{face|mouth|smile|eyelid|side of (my |his |her |the )face|half (my |his |her )face}",
    "almost": """{about to|bout to|boutta|abt to|gonna|going to|goin to|might|may|could|fixing to|finna|near to|close to|want to
        ready to|{feel|think|afraid} {i will|i'll|i'm going to|i'm gonna|i might}
        feel like {i will|i'll|i'm going to|i'm gonna|i might|i could}|will|nearly|almost}""",
    "nearly": """{nearly|almost|like to|liked to|near|just about|close to|feel like|feels like|feeling like|on the verge of
        on the point of|verge of|came close to|scared of|worried about|afraid of}""",
    "limb": "{(left |right |one ){arm|leg|hand|side}|(one )side of (my|his|her) body}",
    "cannot": """{can't|can not|can no longer|can no more|cannot anymore|no fit|no longer able to|cannot|could not|couldn't|unable to|not able to|struggling to|hard to
        can hardly|can barely}""",
    "vomiting": """{vomiting|vomitting|vomitin|throwing up|throwin up|puking|being sick|heaving|retching
        spewing|barfing}""",
    "fruit": """{{rotten|sweet} fruit|fruit|fruits|fruity|pear drops|peardrops|pears|(rotten )apples
        banana(s)|pineapple|acetone|nail {varnish
          polish} (remover)|nail stuff|paint thinner|thinner
        sweet|sweets|candy|ketones|solvent|glue|chemicals}""",
}


def _with_shared(block: str) -> Block:
    return Block(Template(block).substitute(_SHARED))


_LOW: Final = """
# shaking
shaky, shakey, shakie, shaki, shakky, shakily, shakiness, shakyness, shakes badly, the shakes
got the shakes, have the shakes, shaking, shakin, shakking, shakes all over, shake like a leaf
shaking like a leaf
{hands|hand|legs|knees|body|fingers|arms} (are |is |r |keep |started |just |wont stop |
  won't stop ){shaking|shaky|shakey|trembling|trembly|tremble|shake|shakes|jittery|wobbly}
{my|whole} body shakes, cannot stop shaking, can't stop shaking, all shook up inside, i shake
i shook {all|so|badly|for|and|uncontrollably}, {hungry|sweaty|dizzy|weak} and shook, shook {badly|a bit|a lot|all over|all morning|all day|all night|all afternoon|all evening|like a leaf}
am shaking, trembling, trembled, trembly, trembles, tremble, tremors, tremor, tremours, trembeling
{feel|feels|feeling|bit|little|very|so|and|all|really|hungry and} shay, {ah|a|mi|i|me} {di|deh|dey} {shake|tremble|sweat|shiver}, {hand|hands|leg|legs|body} shake shake, trembling hands, quivering, quivery, jittery, jitters, the jitters, jittry, jelly legs, {legs|knees} {have gone|went|gone|turned|turning|going} to {jelly|water|rubber}
{legs|knees} buckling, knees (keep |are )giving way, legs giving way
legs like jelly, legs feel like jelly, legs of jelly, like jelly, weak at the knees, wobbly, shoogly, shooglie
wobbly legs, wobbley, wobly, my knees are weak, weak knees, knees weak, knees buckling
legs gave way, legs giving way, unsteady, unsteady on my feet, wonky on my feet, all of a tremble
all aquiver, twitchy and weak, doddery, shivery, shivering, shivers, all shivery
# sweating
sweaty, swetty, sweatty, sweating, swetting, sweeting all over, sweats, cold sweat(s)
breaking out in a sweat, broke out in a sweat, breaking a sweat for no reason, drenched in sweat
soaked in sweat, dripping with sweat, pouring with sweat, pouring sweat, sweat pouring
sweat is pouring, sweat running down, night sweats, sweat through my clothes, sweat all over
covered in sweat, wet with sweat, clammy, clamy, clammy hands, clammy skin, cold and clammy
clammie, perspiring, perspiration, in a lather of sweat, sweat like crazy
hot and sweaty and weak, sweated through, glowing with sweat
# head
{body|hands|hand} (just )dey vibrate, sar {ghoom|chakra} {raha|rahi}( hai), sweat a {run|pour|drip}( off| down)( mi), {wan|wan go} {faint|collapse|black out}
feel like {i'm|i am} on a {boat|ship|merry go round|roundabout|trampoline|swing}, {feel|feels|feeling} {fant|faynt|fent|fiant}
feel(s) like (say |seh ){mi|i|me} {a go|ago|go|wan|wan go|dey go} {drop|fall|faint|collapse|fall down}
tunnel vision, faint, feint, {feel|feels|feeling|bit|very|so|going to|gonna|about to|came over all|come over all|come over} {fait|fain}, feeling faint, feel faint, faintish, fainty, fainting feeling, faint feeling
faint spell coming, faintness
$almost {faint|pass out|passout|black out|blackout|collapse|keel over|fall over|fall down|go down
  drop|fall out|flake out|conk out|lose consciousness|keel|swoon|hit the {deck|floor|ground}}
$nearly {fainted|fainting|passed out|passing out|blacked out|blacking out|collapsed|collapsing
  keeling over|keeled over|fell over|falling over|went down|fell out|falling out
  losing consciousness|lost consciousness}
{feel|feels|feeling} (like )(i am |i'm |i )(will |going to |gonna ){falling|fall|falling down|fall down|falling over|topple|toppling over}
$nearly (i )(will |would |am going to |could |might ){faint|pass out|black out|collapse|keel over}
dizzy, dizy, dizzi, dizzie, dizzey, dizzzy, dizz, dizzily, dizziness, diziness, dizzyness
dizzines, dizzness, dizzie spell, dizzy spell(s), diziy, disy head, giddy, giddyness, giddiness
gidy, lightheaded, light-headed, lite headed, lightheadedness, light headedness, light heded
lighthead, liteheaded, head feels light, light in the head, light in my head, head is light
woozy, woozey, wozy, wuzzy, woozie, swimmy, swimmy headed, swimming head, head is swimming
head swimming, head spinning, head is spinning, my head spins, head spins, head is turning
mi a {shake|shiver|tremble|sweat}, pure drookit, drookit {wi|with|in} {sweat|the sweat}, head a spin, head a swim, shakes again, the shakes again, {chakkar|chakar} aa {raha|rahe|rahi}( hai| hain), pasina aa raha( hai), kaanp {raha|rahi}( hoon| hun| hai), nahihilo( ako), nanginginig( ako), nanghihina( ako), pinagpapawisan, head a spin me, head a turn, head spinnin, head turning, head dey turn me, eye dey turn me, room is spinning, room spinning, the room spins
everything is spinning, everything spinning, spinning around me, world is spinning
drunk without drinking, feel drunk, feeling drunk, feel like i am drunk, off balance
off my balance, losing my balance, lost my balance, head rush, floaty, spaced out, spacey, spacy
out of it, headachy and shaky, head feels funny, head is funny, funny head, funny turn
having a funny turn, had a funny turn, queer turn, feeling funny in the head, head feels empty
head empty, heady, staggering, stumbling around, wooly head, woolly headed, foggy headed
foggy head, brain fog, brain foggy, head foggy, cannot think straight, can't think straight
cant concentrate, can't concentrate, cannot concentrate, hard to concentrate, can't focus my mind
muzzy, muzzy head, fuzzy headed, fuzzy head, head is fuzzy, brain feels fuzzy, brain fuzzy
seeing stars, saw stars, went all funny, legs have gone, walking like {a drunk|drunk|i am drunk}, seeing (black |dark ){spots|dots|specks}, {stood|got} up and saw stars, having low sugar, {sugar low|low sugar} feeling, shakes and {hungry|sweaty|dizzy|faint|weak}, i {sweat|shake|tremble} and {sweat|shake|tremble}, spots before my eyes, stars before my eyes, vision going dark
going dark around the edges, everything going black, everything is going black, things going dark
not steady, not steady on my {feet|legs}, can't walk straight, can't stand (up ){straight|without swaying|without falling}, swaying, pening, dissy
{lite|lyt|lyte} {heded|hedded|head}, {having|had|got|have} (a |the ){wobble|wobbles}, {it's|it is} (all |just ){spinning|going round|swaying}, {floor|room|ground|ceiling} (is |keeps |just keeps ){moving}, haath kaanp, {hilo|nahilo} {ako|na}, can't {hold|keep} {my|the|a|me} {hand|hands|phone|cup|pen|spoon|fork|glass|needle} {still|steady}, shakes and sweats, sweats and shakes, clumsy, so clumsy, swooning, swoony
{come|came|coming|comes} over (all ){funny|queer|strange|weird|peculiar|faint|dizzy|weak|hot and cold|odd}
# hunger
{very|really|so|super|extremely|crazy|suddenly|terribly} hungry and {shaky|weak|shakey|sweaty
  dizzy|trembling|faint|cross|lightheaded|tired|irritable}
{suddenly|sudden|all of a sudden} {hungry|starving|hunger|ravenous|very hungry}
hungry and {shaky|shakey|weak|sweaty|dizzy|trembling|faint|shaking|lightheaded}, weak and hungry
weak as {water|a kitten|a baby|a lamb}, weak from hunger, weak with hunger, shaky and hungry
starving and {shaky|weak|shaking|sweaty|dizzy}, ravenous and {shaky|weak|shaking}, hunger shakes
{i|we|he|she|body|hand|hands|leg|legs|my body|my hand|my hands} {dey|de|don dey|just dey|still dey} {shake|sweat|tremble|shiver}( and {shake|sweat|tremble})( well well| well)
dey {shake|sweat|tremble|shiver}( and {|dey }{shake|sweat|tremble|shiver}), hangry and shaky, hunger is making me shake, hunger dey shake me, faint with hunger
faint from hunger, sudden hunger, hunger pangs and shaky, empty and shaky
# the word itself
hypo(s), hypoed, hypo'd, hypo-ed, hypoo, hypos, having a hypo, {having|had|got|getting} a hippo, going hypo, hypoing, hypo symptoms, hypo feeling, shakes {going|coming on|starting}, shakes like the clappers
hypoglycemia, hypoglycaemia, hypoglycemic, hypoglycaemic, hypoglicemia, hypoglycemia symptoms
hyppo attack
{feel|feeling|feelin|feels|felt|feels like i'm|think i'm|think i am|going|gone|went|having a|had a
  have a|feeling a bit|feel a bit|feeling really|feel really|feeling very|feel very|feel so
  feeling so} low
{i'm|i am|am|she's|she is|he's|he is|mum is|mom is|dad is} (a bit |very |really |too |still |so |going |running |getting |quite ){low}
{feel|feels|feeling|felt} like (i'm |i am |im ){floating|flying|on another planet|underwater}, {going to|gonna|will|might} make me {pass out|faint|collapse|black out}
feel like i'm low, feel like i am low, feel like im low, feels like a low, feels like low sugar
low {sugar|blood sugar} {feeling|attack|episode}, low symptoms, low signs, symptoms of a low, symptoms of low, signs of a low, signs of low
{signs|symptoms} of low {sugar|glucose|blood sugar}, {hunger|dizziness|dizzy|faint|sweaty|weak|sudden hunger} and (the )shakes, low sugar symptoms, low sugar signs, low sugar feeling
{sugar|sugars|blood sugar|glucose|bg|levels} {feels|feel|is dropping|dropping|is crashing|crashing
  crashed|has crashed|just crashed|has tanked|plummeting|plummeted|has plummeted|is falling|falling|dropped on me|feels low|has dropped|going down fast|is going low
  going low|went low|gone low|bottomed out|is bottoming out|tanked|is tanking|tanking
  is (too |very |really |so |quite |a bit |getting |running ){low}|are dropping|are low|too low|very low}
{i'm|i am|she is|he is|am} having low sugar, {getting|feeling|having|got|get} {chakkar|chakkars|chakar}
sugar crash, sugar crashing, crashing, going down fast, dropping fast, bottoming out
having a low, a low coming, low coming on, low is coming, hypo coming, hypo coming on
sugar dey drop, sugar don drop, sugar drop on me
# heart, skin, mouth
heart (is |was |keeps |dey |going ){racing|pounding|thumping|fluttering|beating fast
  beating so fast|beating hard|beating very fast|hammering|galloping|jumping|skipping|going fast
  beating like a drum|fast|beats fast|running|flutters|cut fast}
racing heart, pounding heart, fast heartbeat, fast heart beat, rapid heartbeat, rapid heart beat
quick heartbeat, palpitation(s), palpatations, palpitaions, palps, heart palpitations
hart racing, hart pounding, heart raceing, heart races, heart flutters, my heart dey beat fast
heart going mad, heart going like the clappers, heart in my throat, pulse racing, pulse is racing
{tingling|tingly|numb|tingle|pins and needles in (my|the)} {lips|lip|mouth|tongue|in my lips|in my mouth
  around my mouth|round my mouth}
lips (are |feel |feels |going |r |have gone ){tingling|tingly|numb|tingle|tinglng}
mouth (is |feels |going ){tingling|tingly|numb}, tongue (is |feels ){tingling|tingly}
pins and needles round my mouth, pale, pale and sweaty, gone pale, went pale, white as a sheet
gone white, grey and sweaty, gray and sweaty, looks pale, look pale, ashen
{weak|feeling weak|feel weak|feels weak|weakness|very weak|so weak|all weak|weak all over
  weak and shaky|weak and sweaty|weak and tired|suddenly weak|weak in the legs|no strength
  no strength at all|body is weak|body weak|body dey weak me|no energy and shaky|drained and shaky
  legs are weak|my legs feel weak|got no strength|strength is gone|strength has gone|limp all over
  feeling feeble|too weak to stand|weak legs}
anxious and {shaky|sweaty|shaking|sweating}, nervous and {shaky|sweaty|shaking|sweating}
irritable and {shaky|sweaty|hungry}, snappy and shaky, cranky and shaky, grumpy and shaky
feel panicky, panicky, feeling panicky, panicky and sweaty, sudden panic, on edge and shaky
agitated and sweaty, jumpy and sweaty, nervy and shaky, cold shivers, goose bumps and shaky
nightmares and sweating, woke up sweating, woke up soaked, woke up drenched, woke up shaking
woke sweating, woke up sweaty, woken up sweating, nauseous, nauseus, nausious, naucious, nausea
nauseated, queasy, quesy, queazy, feel sick, feeling sick, feels sick, felt sick, felt queasy
feel like im going to be sick, feel off and shaky, sleepy and shaky, tired and shaky
shaky and tired, headache and {shaky|sweaty|shaking|hungry|weak}, crying for no reason
acting strange, acting odd, acting weird, acting funny, behaving oddly, behaving strangely
acting drunk, seems drunk, looks drunk, odd behaviour, odd behavior, strange behaviour
strange behavior, not himself, not herself, not quite with it
"""

_HIGH: Final = """
# thirst
{wan|wanna|want|dey} (dey ){drink} water {every time|steady|anyhow|all the time|always}, {bahut|bohot} pyaas( lag rahi)( hai), uhaw na uhaw( ako), {dey|i dey} thirsty well well, {pissing|peeing|weeing} like {a horse|a racehorse|anything}
$very {thirsty|thirtsy|thristy|thursty|thirstey|parched|dehydrated|dry mouthed}, thirsty $ever, thirsty bad( bad), thirsty as, thirsty {so|til|till|suh|die|wella|pass}, thirst is {too much|killing me|terrible|unreal}, thirsty no end, thirsty {fuh|for} so, thirsty {something|summat} {awful|terrible|shocking|fierce}, thirsty {can't|won't} {stop|quit}
{thristy|thursty|thirtsy}, $very {dry|dried out} mouth
mouth (is |feels |so |very |really |too |is so |is very |is really |has gone |as |is bone ){dry
  parched|dry as a bone|dry as dust|like cotton|like sandpaper|like the desert|like a desert|like the sahara|like sand|like dust|like a camel}
{dry|parched|cotton|sandpaper} mouth, parched, mouth feels like cotton, throat is dry as
{great|terrible|raging|extreme|excessive|constant|awful|bad|horrible|severe|unquenchable|mad
  unusual|intense|wicked|heavy|crazy} thirst
mouth like {the|a} {sahara|desert}, thirst {won't go|wont go|will not go|that wont quit|is killing me|is terrible|is bad|is awful
  is crazy|is unreal|dey catch me|won't stop|wont stop|won't quit|all the time|never stops
  day and night}
{can't|cannot|cant|can not} {stop drinking|stop drinking water|quench my thirst|quench the thirst
  quench this thirst|get enough water|get enough to drink|drink enough|stop drinkin
  seem to drink enough|slake my thirst}
drinking {gallons|litres|liters|buckets|tons|loads of water|so much water|a lot of water
  lots of water|water nonstop|water non-stop|water constantly|water all day|water all night
  water all the time|water like crazy|water like a fish|like a fish|pints and pints|too much water
  and drinking}
{need|want|craving|drink} water {all the time|constantly|every minute|non stop|all day}, {it's|all|gone} fuzzy, drank gallons, {bottle after bottle|glass after glass|cup after cup|jug after jug|pint after pint} (of water), drinking {loads|tons|buckets|so much|too much|nonstop|non stop|non-stop|constantly|all day|all night|all the time|like crazy|like mad}
{drink|drank|drinking|drunk} (a |the |a whole |the whole |whole |half the ){lake|river|well|ocean|sea|reservoir|well dry|tap dry|sea dry|river dry}
thirsty thirsty, thirsty and {peeing|tired|weeing|dry|urinating|pissing|pee|always peeing|going to the toilet
  blurry|headache|weak|passing water|still thirsty}
tired and thirsty, dry and thirsty, thirst, thirstier than {usual|normal|ever|before}, more thirsty than usual
water dey hungry me, thirsty dey catch me, {wild|fierce|wile|ferocious} thirst( on me), dying of thirst, dying for water, gagging for a drink
tongue stuck to the roof of my mouth, tongue like leather, tongue is dry, lips dry and cracked
dehydrated, deydrated, drouthy, {terrible|awfy|awfully|some|wild|fierce} drouth
{gasping|gaspin|choking|chokin|perishing|dead|burning|burnin|dying|mad} {with|wi|for|from|of} (the )thirst
{urine|urination} frequency, frequency of {urine|urination}
# water
{pee|peeing|peein|peed|wee|weeing} $ever
{peeing|weeing|wee-ing|pee-ing|urinating|pissing} every {few|other|half|couple of|five|ten|twenty|5|10|15|20|30|45} {min|mins|minutes|hour}
    {piss|pee|urinate} {plenty|well well|steady|anyhow}
{peeing|weeing|urinating|pissing} every {hour|half hour}
{pissing|piss|pissin|urinating|urinate|urinated|peeing again|passing water|passing urine
  pass water|pass urine|urine|widdling|tinkling|weewee|wee-wee|going for a wee|going for a pee
  going to pee|going to urinate|go pee|going to the toilet|going to the bathroom|going to the loo
  going toilet|going to the washroom|going to the restroom|going to the lav|going loo
  go to the toilet|go to the bathroom|go to the loo|go toilet|running to the toilet
  running to the bathroom|running to the loo|toilet|bathroom trips|in the bathroom|on the toilet
  in the toilet|at the loo|loo trips|up to pee|up to wee|getting up to pee|getting up to wee} $ever
{passing|passed|pass|passes|passin} {much|nuff|nough|bare|lots of|a lot of|loads of|so much|too much|plenty|plenty of|more} {water|urine|pee
  wee}
{lots|loads|a lot|plenty} of {peeing|urine|pee|wee|weeing|urination|urinating}
{frequent|constant|excessive|increased} {urination|peeing|urinating|weeing|trips to the bathroom
  trips to the toilet|urine|toilet trips|bathroom trips}
always {peeing|weeing|urinating|pissing|needing a wee|needing to pee|need to pee|on the toilet
  in the bathroom|on the loo|going to the toilet|in the toilet|passing water}
{keep|keeps|keep on|can't stop|cannot stop|cant stop|wont stop|won't stop|non stop|nonstop|constantly} {peeing|weeing
  urinating|pissing|peein|passing water|passing urine|needing to pee|needing the toilet
  needing a wee|going to the toilet|going to the bathroom|going to the loo|going pee
  going for a wee|going for a pee|running to the toilet|running to the bathroom|running to the loo
  needing the loo}
{up|woke up|waking up|got up|awake} all night {peeing|weeing|to pee|to wee|urinating|pissing
  going to the toilet|going to the bathroom|going to the loo|to the loo|in the loo|on the toilet}
up {three|four|five|six|seven|3|4|5|6|7|8|ten|10} times {to pee|to wee|to urinate|peeing
  in the night to pee|last night to pee|to pass water|to go to the toilet|to go to the bathroom
  to the toilet|in the night|for the toilet|for the loo}
peed {five|six|seven|eight|nine|ten|5|6|7|8|9|10|12|15|20} times, peeing like a racehorse
pissing like a racehorse, peeing buckets, peeing rivers, peeing for england, need to pee $ever
{busting|bursting|desperate} for {a wee|a pee|the loo|the toilet} {every|all} {time|day|night|hour|half hour|few minutes|5 minutes|10 minutes|20 minutes}, {spending|spend} a penny $ever, {keep|keeps} {spending|spend} a penny, {peeing|pissing|weeing|piddling} like, {peeing|pissing|weeing|urinating} every, need the toilet $ever, {running|runnin|never done running|never done runnin} {to the|for a|to} {jacks|lav|bog|dunny|netty|pee|wee|piss|slash|pish|loo|toilet}, {passing|passed} {my|me|ma} water {all day|all night|$ever}, {can't|won't} stop {peeing|pissing|weeing|urinating}, {always|forever|never} (off )on the {loo|toilet|jacks|bog|lav|dunny|netty}, need the loo $ever, wetting the bed, {wet|weed|peed|pissed|soaked} {the|my|his|her} bed, bladder won't give me (any ){peace|rest}, bladder is always full, peeing and thirsty
peeing and drinking, drinking and peeing, drink and pee, pee and drink, pee pee pee
weeing for england, polyuria, polydipsia
# sight
{blurry|blured|blurred|blury|blurrd|bluried|blurr|blurring|blurrying|fuzzy|hazy|cloudy|misty|foggy
  double|unclear|dim|dimmed|wavy|smudgy|bleary|blur} {vision|sight|eyes|eye sight|eyesight|eye
  vison|visoin|viison|seeing|view|site}
{vision|sight|eyes|eye|eyesight|eye sight|vison|everything|the tv|writing|letters|print} (is |are |
  r |looks |has gone |have gone |gone |gets |getting |went |feels |seems |all |a bit |is a bit |
  is all |so |is so |very |is very |really ){blurry|blurred|blury|blured|blurrd|bluried|blur|fuzzy
  hazy|cloudy|misty|foggy|double|dim|wavy}
seeing {two|2} {phones|screens|people|faces|cars|doors|lights|hands|roads|moons}
{seeing|sees|see|seein} {two|2} of {me|you|us|him|her|them|each|everyone|everybody|it}, saw {two|2} of {me|everyone|everybody}, seeing double, {saw|seen|sees} double, {everything|it all|the words|the telly|the screen|the page} {blurs|is blurring|was blurring}
{could not|couldn't|can't|cannot} see {clear|clearly|straight}, see double, seein double, seeing {two|2} of everything, {two|2} of everything
seeing {blurry|blurred|blury|blured|fuzzy|hazy|foggy}, blurriness, bluriness, blurry, blurred, blurrd, blured, bluured, blury, blurring
can't see {clearly|straight|properly|well|right|clear|the numbers|the screen|to read}
cannot see {clearly|straight|properly|well|right|clear}
cant see {clearly|straight|properly|well|right|clear}
{hard|difficult|trouble} {to see|seeing|focusing my eyes}, eyes won't focus, eyes wont focus
eyes not focusing, can't focus my eyes, cant focus my eyes, lost focus in my eyes, eyes dey blur
eye dey blur
# stomach
{$vomiting|vomited|thrown up|threw up|been sick|being sick|sick} {all day|all night|all morning|the whole day|whole day|whole night
  for hours|over and over|again and again|every hour|since yesterday|since last night
  all the time|for {two|2|three|3} days|for days|repeatedly|since this morning|since morning}
{$vomiting|vomited|threw up|thrown up|been sick|sick|puked|boked} {twice|two|three|four|five|six|seven|eight|ten|2|3|4|5|6|7|8|10} times
{keep|keeps|keep on|kept} $vomiting, vomit, vomits, vomiting, vomitting, vomitin, vommiting, vomting, vomited, vomitted, vommited
boke, boked, boking, bokin, boak, boaked, boaking, {getting|gettin|got} sick {twice|again|all day|all night|all morning|every hour|{3|4|5|6|three|four|five} times}, hoying up, throwed up, vomit up, vomits up, voming, vom, vommed, voms
{throwing|throw|trew|threw|thrown|throwin|trowing|trow|throwing-up|thew} up, thrwing up, throwin up
throwing it up, puke, puked, puking, pukin, pukes, barf, barfed, barfing, upchuck, upchucked
{sick|vomit|throw up|puke|vomiting|throwing up} {every time|everytime|whenever|each time} i {eat|drink|swallow}, chundering, chundered, spewing, spewed, spew, chucking up, chucked up, hurling up, hurled my
hurl up, retching, retched, wretching, dry heaves, dry heaving, heaving my guts, heaving
{threw|throwing|thrown|chucked|chucking|hurled|hurling} {it all|everything|all of it} (back ){up|out}
{threw|throwing|thrown|puked|puking|heaved|heaving|spewed|spewing|vomited|vomiting|chucked|chucking|coughed|hurled|hurling} {my guts|his guts|her guts|my (whole ){lunch|dinner|breakfast|food|supper|tea|meal|medicine|pills|tablets}} (back ){up|out}
heaved up, being sick, sick again, sick as a {dog|cat}, just been sick, been sick in the night, sick in {the|a|my} {bucket|sink|bowl|toilet|loo|bag|bath}, too many trips to the {toilet|loo|bathroom|washroom|restroom}, was sick after {lunch|dinner|breakfast|eating|food|supper|tea|my tea|a meal|my meal|the meal}, been sick twice, been sick again, been being sick, was sick twice
was sick three times, was sick in the night, sick to my stomach, sick in my stomach
sick to the stomach, sicking up, sicked up, {brought|bringing|brings|bring} up (all ){my|his|her|the} {breakfast|dinner|supper|tea|meal|pills|tablets|medicine|milk|toast}
bringing up food, brought up my food
brought up my lunch, lost my lunch, lost my dinner, lost my breakfast, {bringing|brings|bring|brought} {everything|it all} up, {chucked|chucking|puked|puking|spewed|spewing|threw|heaved|heaving} {me|my|his|her} guts up, bringing up everything
bringing it all up, bringing up bile, vomiting bile, emesis, tossed my cookies, food came back up
food came up
{stomach|tummy|belly|bely|stomache|stomack|abdominal|abdomen|gut|tum|tumy|bellie|stumic|stomic
  upper stomach|stomach-ache} {pain(s)|ache|aches|aching|cramp(s)|cramping|hurts|hurting|hurt
  is hurting|is sore|sore|killing me|is killing me|is paining me|paining|dey pain me|dey hurt
  pains me|is in pain|in knots|really hurts|hurts so much|hurts bad|hurts a lot|is painful
  in agony|griping|aches so much|is aching|is cramping}
{stomachache|stomach-ache|stomache ache|tummyache|bellyache|belleyache|tummy-ache|belly-ache
  gut ache|collywobbles}
pain in {my|the|his|her} {stomach|tummy|belly|gut|guts|abdomen|stomache|side and vomiting}
pains in {my|the|his|her} {stomach|tummy|belly|gut|guts|abdomen}
sore {stomach|tummy|belly|tum|gut}, cramps in my {stomach|tummy|belly}, gripe in my belly
belly {gripe|griping|a hurt me|ache|bite}, bad {belly|stomach|tummy} {pain(s)|ache|cramps}, bad belly, my stomach hurts
# breath and the word itself
{fast|rapid|quick} breathing
{deep fast|fast deep|fast and deep|deep and fast|deep rapid|rapid deep} breathing
breathing (is |so |very |really |too |real ){fast|rapidly|quickly|deep|deeply|heavy|heavily
  fast and deep|deep and fast|rapid}
lethargic, {a bit|bit|little|slightly} {drowsy|drowzy}, panting at rest, panting sitting still
hyperventilating, kussmaul
{feel|feeling|feels|felt|think i'm|think i am|feel really|feel very|feeling really
  feeling very} high
feel hyper, hyperglycemia, hyperglycaemia, hyperglycemic, hyperglycaemic, high symptoms
high signs, signs of high sugar, symptoms of high sugar, high sugar symptoms
{ketones|keytones|ketons} (are |is |in my urine |in urine |in my pee |show |showing |on the stick |
  high |positive |moderate |large ){high|positive|moderate|large|present|up|show|raised|in urine
  in my urine|in my pee|purple|trace}
high ketones, positive for ketones, sugar rush feeling, high sugar feeling
feel like my sugar is high, feels like my sugar is high, feels like high sugar
feel my sugar is high
"""

_EMERGENCY: Final = """
# lost consciousness
fell out at {church|work|mass|home|school|bingo|market|the shop}, fell out {in|on|at|by} the {church|floor|porch|lobby|yard|street|store|kitchen|shower|bathroom|hallway|pew|aisle|garden|parking lot|driveway|grass|ground}, {just|done|she|he} fell out and, {catch|caught|took|taking|taken|take} a {fit|seizure}, {is|am|i'm|are|was} after {keeling over|fainting|collapsing|passing out|blacking out|taking a fit}, {with|having|has|taking|throwing} {fits|seizures|convulsions}, {real|so|very|am|is|feel|feels|feeling|all} confuse {and|an|n|&} {vomiting|vomit|throwing up|sick|drowsy}, {am|is|feel|feels} (so |very |real ){confuse|confuse up}, {nah|na|noh} {wake|wake up|answer|respond|breathe|breathing}, no gree {wake|wake up|answer|respond|talk|swallow|breathe}, don {collapse|faint|pass out|black out|convulse}, drop down and, {drop|dropped} {down|dong|dung} {just|right} now, {no|noh|nah|not|never} di breathe, {ain't|hasn't|has not|won't|not|didn't|doesn't} {come to|coming to|come round|coming round|wake up|waking up|woke up|woken up}, {nobody|no one|noone|none of us} can wake, {talking|talkin|speaking} out {of |}{his|her|my|their} head, {don't|doesn't|didn't} know {me|us|who i am|who we are|his own|her own}, {passed|past|pass'd|pased} out, passing out, passes out, pass out, passedout, passed out cold
blacked out, blacking out, black out, blackout(s), blacks out, fainted, faintd, fanted, faints
don faint, faint {already|away}, drop( down) {and|an} faint, fainting, fainted away, fainting spell(s), {i|he|she} did faint, {no|lost} {feeling|strength|power} in (my |his |her |the |one )(left |right ){arm|leg|hand|side|face}, have fainted, a faint, collapsed, colapsed, collasped
collapse, collapses, collapsing, colapse, keeled over, keels over, keel over, lost consciousness
lost conciousness, lost consiousness, losing consciousness, loses consciousness
lose consciousness, loss of consciousness, unconscious, unconcious, unconsious, unconscius
unconscous, uncounscious, not conscious, isn't conscious, isnt conscious, knocked out cold
out cold, in a coma, coma, going into a coma, comatose, slipped into a coma, unresponsive
unresponsiv, not responsive, not responding to {me|us|voice|pain|touch|anything}
{is|isn't|isnt|are|he's|she's|hes|shes|wife|husband|mum|mom|dad|mother|father} not responding
isn't responding, isnt responding, doesn't respond, doesnt respond, won't respond, wont respond
no response from $him
{he|she|they|mum|mom|dad|my wife|my husband|my mother|my father} {fell out|dropped|went down
  went out|conked out|flaked out}
dropped to the floor, dropped to the ground, fell to the floor, fell to the ground
fell down and not, found $him on the floor, {woke up|came to|come to|came round} on the {bathroom|kitchen|bedroom|shop|toilet|hall} floor
{on the floor|on the ground|slumped|lying there} {not moving|and not moving|and wont move
  and won't move|not answering|and not answering|unconscious}
not moving, isn't moving, isnt moving, slumped over, slumped in the chair, limp and, gone limp
went limp, is limp, no pulse, not breathing, isn't breathing, isnt breathing, stopped breathing
has stopped breathing, stop breathing, turned blue, gone blue, went blue, going blue, {he|she|face|fingers} {is|looks} blue, turning blue
lips are blue, lips blue, blue lips, lips turning blue, swooned, conked out, i fell out
went unconscious, going unconscious, falling unconscious
{i|he|she|dad|mum} hit the {floor|deck|ground}, lights went out and {i|he|she}
{not|won't|doesn't|does not|will not|isn't|can't|cannot} {open|opening} {his|her|their|the} eyes
# cannot be woken
$cannot {wake(n) (up)|rouse|awaken|wake|arouse} ($him) (up)
$cannot get $him {to wake|to wake up|awake|up|to respond|to answer|to come round}
{won't|will not|not|isn't|doesn't|does not|refuses to|refuse to|no dey} {wake(n) (up)|waking (up)
  wakeup|rouse|respond|responding|come round|coming round|be woken|stir|react|reacting}
{cannot|can't|can not} be {woken (up)|waked|awakened|roused|wakened|woke|woken up}
{hard|difficult} to {wake|rouse|wake up|waken}, unrousable, unarousable, unwakeable
{sleeping|asleep} and {won't|cannot|can't} wake
# fits
{seizure|sezure|siezure|seisure|seizur|seziure|ceizure|sizure|seazure|seezure}(s), seizing
convulsion(s), convultion(s), convulshun, convulsing, convulsed, convulse, convulses, convulsive
{having|had|have|has|haveing|havin|having had|just had|took|taken|taking|takes|takin|got|getting
  suffered|suffering|goes into|went into} {a fit|fits|an epileptic fit|an epileptic attack
  another fit}
{is|was|started|keeps|he's|hes|she's|shes|been|mum is|mom is|dad is|wife is|husband is} fitting
fitting on the floor, fitted on the floor, fit on the floor, epileptic fit, epilepsy attack, fits and {shaking|jerking|foaming}, jerking all over
body is jerking
{arms|legs|arms and legs|whole body} (are |is ){jerking|thrashing|thrashing about|stiffening}
thrashing about on the floor, {foam|foaming|froth|frothing} (at|from) (the|his|her|my) mouth
eyes {rolled|rolling|rolled up|are rolling} back, {rolled|rolling} (his|her) eyes back
gone stiff and shaking, went stiff and shook, shaking and won't respond, shaking uncontrollably
# confusion
confused, confusd, confussed, confuse and, cunfused, confuzed, konfused, confussion, confusion
all confused, muddled, muddled up in the head, disoriented, disorientated, disorianted
disorientation, delirious, delirium, delirius, hallucinating, incoherent, rambling and confused
head all mixed up, seeing things {that aren't there|that are not there|not there}
mixed up and drowsy
{not|isn't|aren't|doesn't|making no|makes no|talking no} (make |makes |making )(any )sense
{talking|talks|speaking|speaks} {nonsense|rubbish|gibberish|gobbledygook|garbage|jibberish}
{doesn't|does not|don't|do not|not|didn't|no longer} {know|knows|remember|recall} {where (he|she|i
  they) (is|am|are)|who (he|she|i|they) (is|am|are)|what day it is|what year it is|who we are|(his
  her|my) own name}
{can't|cannot|can not} {remember|recall} {my name|where i am|who i am|his name|her name
  where he is|where she is}
{doesn't|does not|not|didn't|can't} {recognise|recognize|recognising|recognizing|know} {me|us
  anyone|his family|her family|(his |her |my |the )(own ){daughter|son|wife|husband|kids|children|mother|sister|brother|grandchildren|house|home|kitchen|street|room|flat}}
# drowsiness
(very |so |extremely |really |too |unusually |terribly |getting |more and more |suddenly |
  severely |is |all ){drowsy|drowzy|drousy|drowsey|drozy|drowsyness|drowsiness}
{very|so|extremely|really|too|unusually|getting} {lethargic|groggy|hard to keep awake}
{can't|cannot|cant|couldn't} be {kept awake|roused|woken|woken up}, $cannot {stay|keep|stay up} awake, $cannot {keep|hold|open} (my |his |her )eyes (open)
$cannot keep {him|her} awake, keeps {falling asleep on me|drifting off|nodding off mid sentence}
drifting in and out, in and out of {consciousness|it}, slipping in and out, slipping away
{drifting off|falling asleep} {mid sentence|while talking}, {half|semi|barely|hardly} conscious
{hardly|barely|not fully|not really} awake, stuporous, in a stupor
# like a stroke
{slurred|slurring|slurry|slured|slurd|sluring|slurrd|garbled|thick} {speech|words|talk|speach
  my words|his words|her words|voice}
slurs (my|his|her) (words|speech)
{speech|words|speach|talking} (is |are |was |has gone |gone |all |coming out |are coming out |come out |
  keep coming out |came out |is all |is getting |
  sounds ){slurred|slurring|slurry|slured|slurd|garbled|jumbled|funny|thick|muddled|wrong|all wrong}
slurring, slurs, slured, slurred
{can't|cannot|can not|unable to|not able to|couldn't|suddenly can't} {speak|talk|get {my|his
  her} words out|get words out|speak (properly|right|clearly)|talk (properly|right|clearly)
  form words|say words|smile on one side}
{lost|losing} {my|his|her} speech
{trouble|difficulty} {speaking|talking|with speech|getting words out}, words won't come (out)
{talking|speaking} funny
$face (is |has |was |looks |is all |has gone |gone |all |keeps ){drooping|droopy|drooped|droops
  droop|dropped|fallen|hanging|hanging down|lopsided|lop-sided|twisted|crooked|paralysed|paralyzed
  sagging|slack|has fallen}
face (is |has gone |feels |went |gone ){numb|dropping}, numb face, numb on one side (of my face)
{drooping|droopy|lopsided|crooked|twisted|sagging|slack} $face
{weak|numb|dead|limp|floppy|paralysed|paralyzed|useless} $limb
$limb (is |are |has gone |feels |went |gone |suddenly |all |is so |is very ){weak|numb|dead|limp
  floppy|paralysed|paralyzed|useless|not working}
{weakness|numbness|numb|weak} {in|of|on|down} (my |his |her |one |the )(left |right ){arm|leg|hand
  side}
{can't|cannot|can not|unable to|couldn't} {lift|move|raise|feel} (my |his |her |one |the )(left |
  right ){arm|leg|side|face|arms|legs}
{arm|arm's|leg|leg's} (has |is |feels )(gone ){right|really|very|so|proper|dead|pure|all} {weak|limp|numb}
{took|taken|swallowed} {the|a} whole {bottle|box|packet|pack|strip} of {pills|tablets|metformin|meds|insulin}, {took|taken|swallowed} all {my|the|his|her} {pills|tablets|meds} {at once|in one go|together}, possible stroke
{having|had|have|has|think it's|like|is it} a stroke, stroke symptoms, mini stroke, mini-stroke
signs of a stroke, {paralysed|paralyzed} {down|on} one side, sudden blindness
{gone|went|suddenly|going} blind, {can't|cannot|can not} see {at all|anything}
lost {my|his|her|the} {vision|eyesight}, lost {my|his|her} sight, lost {sight|vision} in (one|my|the), worst headache of my life
# swallowing
$cannot {swallow(ing)|swollow|swalow|swallo|swallow anything|swallow water}, trouble swallowing
{difficulty|difficulties|problem|problems} swallowing, {won't|not} {swallow|swallowing}, choking
choked on, throat (is ){closing|swelling|swollen shut|tight and closing}
tongue (is ){swelling|swollen}
# chest
{chest|ches|chesst|chets|chst|cheast|breastbone|heart} (is |feels |is feeling |keeps |keep |has been |a |dey |still |
  really |gone |so ){pain(s)|pian|payn|pane|paining (me)|pains me|pain me|hurts|hurting|hurt (me)|ache
  aches|aching|pressure|tight|tightness|tightening|heavy|heaviness|squeezing|crushing|discomfort
  killing me|in pain|stabbing|painful|sore|attack}
{crushing pain|pain(s)|pressure|tightness|tight|heaviness|squeezing|ache|weight|crushing|stabbing|band|hurt
  hurting|aching|discomfort|elephant} {in|on|across|around} ({my|the|his|her|mi|me} ){chest|ches|chesst|chst
  breastbone|heart}
{tight|heavy|crushing|hurting|painful|sore|squeezing|achy} chest, chestpain(s), hart attack
{seene|chest|chhati|chaati} {mein|me|ko|ka} dard, {masakit|sumasakit|naninikip} (ang )dibdib( ko), hindi (ako )makahinga, saans nahi aa {raha|rahi}( hai)
heartattack, angina {pain|attack|again}, cardiac arrest, elephant on my chest
pain {down|in|going down|shooting down} {my|the|his|her} {left arm|arm and jaw|jaw|jaw and arm
  right arm}
pain in my arm and chest, jaw and arm pain, chest {pained|pains me}, {left|right|my|his|her|one} arm weakened
left arm {pain|hurts|aches|is aching}
tight chested, chest (is ){heaving}, rambling and {makes|making} no sense, rambling {nonsense|and not making sense}, rambling and confused
(one |the left |the right |left |right )side of {his|her|my|the} {face|mouth|lip|smile} (is |has |looks |feels |feel |went |hangs |has gone |gone |all ){down|lower|dropped|droopy|drooping|numb|dead|flat|slack|frozen|hanging|stiff|sagging|limp|paralysed|weak|not moving}
# breathing
{trouble|truble|troubles|troble|difficulty|difficult|dificulty|problem|problems|hard|struggling
  struggle|struggles|difficulties|hard time|labored|laboured} (with |to |in ){breathing|breath
  breathe|breathin|breating|breething|catch my breath|catching my breath|get my breath|getting air
  my breathing|get air|get breath}
{$cannot|cnt|kant|carnt|cyaan|cyah|cannae|no fit|not} {breath|breathe|breathin|breathing|breeth
  breeve|brethe|breathe properly|breath properly|catch (my|his|her) breath|get (my|his|her) breath
  get enough air|get (any) air|get a breath|breathe (well|right)|draw breath|take a breath}
short {of|on} {breath|breathe|breathing}
{shortness|shortnes|shortnss} of {breath|breathe|breathing}, short breath, {sort|shot|shrt|shor} of breath, chest {pins|pian|pians|pan|pans|pane|payne|panes}, breathless, breathles
breathlessness, out of breath {at rest|sitting|lying down|doing nothing|just sitting}
gasping, {gasping|gasps|gasped|fighting|fought|struggling|struggled|battling|battled} for {air|breath|oxygen}
{struggled|struggles|fought|fights|fighting|battled|battling} to {breathe|get (my |a )breath|catch (my |his |her |a )breath|get air}
suffocating, starved of air, air hunger
breathing (is |has gone |getting |is getting |very |so ){hard|hard for me|difficult|a struggle
  trouble|problem(s)|difficulties|laboured|labored|funny|shallow|strange|bad|badly}
winded sitting down, wheezing badly, {doesn't|won't} answer me and is {sweating|sweaty|shaking|clammy|pale}, {wheezing|wheezy} {bad|real bad|so bad|hard|heavily}, {jaw|arm|left arm} pain and {sweating|sweaty|nausea|breathless|clammy}, {he|she|mum|mom|dad|and} {won't|doesn't|will not} stay awake, keeps falling asleep and, breath dey {cut|seize} me, chest dey hold me, asthma attack
# breath that smells
breath {smells|smell|smelling|smelled|smelt|stinks|tastes|sells} (funny |weird |strange |odd |bad )(of |like |a bit like |kind of like |
  so ){$fruit}
breath (is |that |dey |just |has a |really |also ){smell(s)|smelling|smels|reeks} (of |
  like ){fruit|fruits|fruity|acetone|pear drops|nail varnish|nail polish|nail polish remover|sweet
  apples|paint thinner}
breath (is |smells |dey |gone |has gone |got ){fruity|frooty|fruitty|fruty|acetone|ketotic}
{fruity|frooty|fruty|fruity smelling|fruit smelling|fruit smell|acetone|acetone smelling
  nail varnish|nail polish|nail polish remover|pear drop|pear drops|sweet smelling|sickly sweet
  ketone|sweet fruity|sweet|ketotic|solvent} breath
{smell|smells|whiff|odour|odor} (of |like ){fruit|acetone|nail varnish|nail polish|pear drops
  ketones} on {my|his|her|the} breath
breath {like|is like} {fruit|acetone|nail varnish|nail polish|pear drops}
{fruity|acetone|nail varnish|nail polish|sweet} {smell|odor|odour|taste} (on |in |from |to )(my |
  his |her |the ){breath|mouth|breathe}
mouth {smells|smell|tastes} (of |like ){fruit|acetone|nail varnish|nail polish|pear drops
  nail polish remover|nail varnish remover}
breathe smells (of |like ){$fruit}
{i|he|she} {smell|smells|smelt} {of|like} {acetone|nail varnish|nail polish|nail polish remover|nail varnish remover|pear drops|ketones}
{my|his|her} breath is like {fruit|acetone|nail varnish|nail polish|pear drops}
# vomiting that will not stop
{$cannot|won't|not|isn't|cnt|doesn't|no fit} {keep(ing)|hold} {{anything|owt|aught|water|fluids|liquids|food
  it|drinks|nothing|a thing|a sip|sips|even sips|even a sip|even water|food or water|water or food|any food|any water
  any fluids} (down|in|inside)|down {anything|water|fluids|liquids|food|any food|any water
  any fluids|even water}}
{nothing|water won't|no food|no water|no fluids|nothing will|food won't|even water won't} {stay(s)
  is staying|staying} down
{keep|keeps|keeping|kept|hold|holds|held|holding} {nothing|no water|no fluids|no fluid|no liquids|no liquid|no food or water|no drinks|no drink} down
{everything|it all|anything i eat|anything i drink|even water|water|whatever i drink
  everything i drink|everything i eat} (just |is |keeps ){comes|come|coming|came} {back up
  right back up|straight back up|up again}
{can't|cannot|can not|won't|doesn't|not} stop $vomiting
{non stop|nonstop} $vomiting
{$vomiting|vomited|thrown up|threw up|been sick} {nonstop|non-stop
  constantly|everything|everything i drink|everything i eat|everything up|even water|blood}
{bringing|brings|bring} {everything|it all} {back up|straight back up|right back up|back out}, coughing blood, $vomiting and {confused|drowsy|very weak|cannot drink|can't drink}
{$vomiting} {$cannot|won't|not} {keep|hold} {anything|water|fluids|liquids|food|it|drinks|even water
  a sip|a thing} (down|in)
{can't|cannot|can not} {keep|hold} {anything|water|fluids|liquids|food|it|a thing} (down|in) $vomiting
confused where {i am|am i|we are}, {drowsy|sleepy|muddled} and {$vomiting}, confused and ($vomiting|sick|drowsy|sleepy), dka, {keto|keto |ketone }acidosis, ketoacidocis
ketoasidosis, diabetic {coma|ketoacidosis}, hyperosmolar
{vomits|vomiting|throws up|vomited|threw up|pukes|puking} {everything|all|anything} (that ){i|we} {give|gave|feed} {her|him|mum|dad}
# the call itself
{call(ed|ing)|ring|rang|phone|phoned|dial|dialled|dialed} {911|999|112|000|an ambulance
  the ambulance|ambulance|emergency|the emergency number|emergency services|the paramedics}
need(s) (an |the ){ambulance|paramedics}, ambulance {please|now|is coming|on the way}, send help
send (an|the) ambulance, {it's|this is} an emergency, medical emergency, think i'm dying
{took|taken|take|taking} an overdose, i think i am dying, help me i'm dying, kill myself, suicidal, end my life, hurt myself on purpose
{everything|it all|all|vision|eyesight} {went|goes|gone} {black|dark}, blacking out
don't want to live, {feel like|feels like} (i'm |i am )dying, don't want to be here any more
 {want|wanna|going|gonna|wish i could} (to )die, wish i was dead, end it all
{sleep|go to sleep|fall asleep} and {never|not} wake (up), {never|not} wake up again, {thinking of|thinking about|feel like|planning on} ending {it|things|everything|it all|my life}
{pills|tablets|insulin|meds|medicine|overdose|overdosed} on purpose, {life is|life's|lifes} not worth (living|it)
better off dead, {kill|hurt|harm} myself, harming myself, no point (in ){living|being alive|staying alive}, no reason to live, nothing to live for
{don't want to|dont want to|do not want to} be {here anymore|alive|alive anymore|alive any more}
{better off|be better off|better} without me, {want to|going to|gonna|wanna} {end it|kms}
{cutting|cut} myself on purpose, am cutting myself, i'm cutting myself, {pills|tablets|insulin} to die
{can't|cannot|cant} go on living
"""


#: Spanish, in the same three levels.
_LOW_SPANISH: Final = """
en hipo, hipo {glusemia|glucemia|glicemia|glusemi|glisemia}, hipoglusemia, hipoglisemia
tiritando, titiritando, tiritones
siento (muy |bien |medio ){baja|bajo} {el|la|mi} {azucar|glucosa}, {estoy|ando|me siento} hipo
suda {mucho|frio|demasiado|a mares|bastante}, se marea, se mareo
sude y sude, tiemble y tiemble, temblando y temblando
temblorina, {el|un|con} tembleque, temblequeo, temblequera, mareito, mareillo, mareadita, mareadito, mareadisima, mareadisimo, flojisima, flojisimo
{siento que|siento como que|como que} {floto|me voy de lado|me voy para un lado|me voy para atras|me caigo|me voy a caer|el piso se mueve|el suelo se mueve|me voy}, me voy de lado
{me|se me} {esta|estaba|viene|va|anda} {bajando|cayendo|desplomando} {el|la} {azucar|glucosa}, {azucar|glucosa} {por los suelos|por el suelo|por el piso|en el suelo|bajisima|bien baja}
{azucar|glucosa} {me|se me} {esta|va|viene} {bajando|cayendo}
me {pego|dio|agarro|entro|vino} {la|una|el|un} {baja|bajada|bajon|palida|tembladera|temblorina|tembladora|debilidad|sudadera|telele|jamacuco|chucaque}
{le|me} dio {el|un} {telele|jamacuco|patatus|soponcio|vahido|mareo}
{temblorosa|tembloroso|temblores|temblor|tembladera|temblando|tiemblo|tiembla|temblo|tiritando
  tiritona|temblar|me tiembla|me tiemblan}
{me tiemblan|tiemblan} {las manos|las piernas|las rodillas|los brazos}
me tiembla {el cuerpo|todo|la mano|todo el cuerpo}, manos temblorosas, piernas temblorosas
temblor(es) en {las manos|la mano|el cuerpo|las piernas}, tiemblo como (una ){gelatina|hoja|perro}, se me mueve el {piso|suelo}, veo (todo ){negro|oscuro}, se me {fueron|acabaron|van} las fuerzas, no tengo fuerza(s), estoy temblando, todo tembloroso, toda temblorosa
piernas de gelatina, flojera en las piernas, me fallan las piernas, las piernas no me sostienen
{sudando|sudorosa|sudoroso|sudor frio|sudores|sudores frios|sudo|sudada|sudado|sude|sudoracion
  sudo frio|sudando frio|sude frio|sudando mucho|sudo mucho|transpirando|transpiracion
  transpiro mucho|transpirando frio|empapada en sudor|empapado en sudor|banada en sudor
  banado en sudor|piel fria y sudorosa|manos sudadas|frio y sudoroso|fria y sudorosa
  pegajosa y fria|mareo(s)|mareada|mareado|mareandome|me mareo|me maree|me marea|me mareaba|me siento mareada
  me siento mareado|vertigo|vertigos|aturdida|aturdido|atarantada|atarantado|atontada|atontado
  abombada|abombado|tarantas|taranta}
{todo|la cabeza|el cuarto|la casa} me da vueltas, me da vueltas {todo|la cabeza|el cuarto}
da vueltas la cabeza, cabeza {ligera|liviana|hueca|vacia}, como borracha, como borracho
se me va la cabeza, se me nubla la mente, veo estrellitas, veo lucecitas, se me pone todo negro
todo se pone negro
{debil|debilidad|debilitada|debilitado|muy debil|sin fuerzas|sin fuerza|flojo de piernas
  floja de piernas|desguanzada|desguanzado|aguada del cuerpo|descompensada|descompensado
  decaida y sudando|decaido y sudando|me siento sin fuerzas}
{casi|a punto de|por poco|por poquito|por poquitito|ya mero|ya merito|ya casi|estoy que|ando que|estaba que|poco falta para que|falta poco para que|siento como si|como que|voy a|siento que|siento que me voy a|me voy a|estoy por
  creo que me voy a|parece que me voy a} (me ){desmayo|desmayarme|desmaye|desmayar|desvanezco
  desvanecerme|caigo|desplomo|desplomarme}
siento que me desmayo, me siento desfallecer, desfallezco, desfallecer, desfalleciendo
sensacion de desmayo, ganas de desmayarme, se me va el mundo, se me fue el mundo, me siento ir
casi se desmaya, casi se desmayo
{mucha|muchisima|tengo|de repente|de pronto} hambre y {temblor|temblores|tiemblo|sudor|mareo
  debilidad|temblando|sudando}
mucha hambre y {temblor|temblando|sudando|temblorosa|tembloroso|mareada|mareado|debil}
hambre de repente, hambre repentina, de repente mucha hambre, hambre de pronto
hambre y {temblor|temblores|tiemblo|sudor|mareo|mareos}
{hipo de azucar|hipoglucemia|hipoglicemia|hipoglucemico|hipoglicemico|una hipo|hipoglusemia
  hipoglisemia|bajon de azucar|bajon|bajonazo|azucar baja|baja de azucar|se me bajo el azucar
  se me bajo la azucar|se me bajo|me bajo el azucar|me bajo la azucar|se me baja el azucar
  azucar bajando|me siento baja|me siento bajo|me siento bajita|siento el azucar baja
  siento que se me baja|se le bajo el azucar|se le bajo la azucar|me dio un bajon|bajada de azucar
  pajara|una pajara|palida|palido|esta palida|esta palido|me puse palida|blanca como papel
  blanco como papel|palpitaciones|palpitacion|taquicardia|corazon acelerado|el corazon acelerado
  corazon me late rapido|se me acelera el corazon|me late rapido el corazon
  me late muy rapido el corazon|corazon a mil|el corazon a mil|se me sale el corazon
  corazon agitado|corazon desbocado|corazon late fuerte}
hormigueo en {los labios|la boca|la lengua|la cara}, labios {dormidos|entumecidos|hormigueando}
{boca|lengua} {dormida|entumecida}, me hormiguean los labios
cosquilleo en {los labios|la boca|la lengua}, nauseas, nausea, nauseas y mareo, asco y mareo
ganas de vomitar y sudor, escalofrios, escalofrio, nerviosa y {temblando|sudando}
nervioso y {temblando|sudando}, ansiosa y {temblando|sudando}, irritable y {temblando|sudando}
actua raro, se comporta raro, desperte sudando, me desperte sudando, desperte empapada
desperte empapado, no puedo concentrarme, no me concentro, yeyo, soponcio, patatus
me dio el yeyo, me dio un soponcio, me dio un patatus, chiripiorca, vahido, vahidos
"""

_HIGH_SPANISH: Final = """
{mucha|muchisima|harta|tanta} {ced|sez|cet}
voy y voy al bano, {hago|hace|haciendo|hice} {mucha|demasiada|harta|bastante} {pipi|pis|chis|orina}
una sed {tremenda|terrible|horrible|enorme|loca|insoportable|increible|brutal|espantosa}
{orine y orine|mee y mee|vomite y vomite|tome y tome agua|tomo y tomo agua|tomando y tomando agua|beba y beba agua}
se me {nubla|nublo|empana} {todo|el mundo|la mirada}, {me la paso|me la vivo|vivo|ando} en el bano, no salgo del bano
{mucha|muchisima|demasiada|tanta|bastante|harta|un monton de|una} sed
{sed|con sed} {todo el dia|toda la noche|todo el tiempo|a cada rato|excesiva|constante|intensa
  insoportable|terrible|horrible|que no se quita|que no se me quita|insaciable|tremenda}
me seco de sed, muerta de sed, muerto de sed, me muero de sed, sedienta, sediento, no se me quita la sed
no me quita la sed, no se me calma la sed, tengo sed todo el tiempo
no paro de {beber|tomar} (agua), no dejo de {beber|tomar} (agua)
{bebo|tomo|bebiendo|tomando} {mucha|muchisima|demasiada} agua
boca {seca|reseca|muy seca|pastosa|seca todo el dia}, {garganta|lengua} {seca|reseca}, resequedad
deshidratada, deshidratado, sed y {orino|ganas de orinar|hago pis|orinando|pis|orinar}
la sed no se quita
{orino|orinando|orinar|hago pis|haciendo pis|hago pipi|haciendo pipi|meando|meo|mear|micciono
  voy al bano|yendo al bano|ir al bano|pis|pipi|orine|orina} {mucho|muchisimo|a cada rato
  todo el tiempo|todo el dia|toda la noche|a cada hora|cada rato|demasiado|muchas veces|cada hora
  seguido|muy seguido|mas de lo normal|sin parar|a cada momento|cada {5|10|15|20|30} minutos|cada media hora
  constantemente}
{mucha|demasiada|muchas} {orina|ganas de orinar|ganas de hacer pis|veces al bano}
no paro de {orinar|mear|hacer pis|hacer pipi|ir al bano}, no dejo de {orinar|ir al bano}
me levanto {toda la noche|muchas veces|a cada rato|varias veces|{3|4|5|6|7|8|10} veces} {a orinar|al bano|a hacer pis|a mear}
orino {5|6|7|8|9|10|12} veces, poliuria, polidipsia, me orino en la cama
{muchas|tantas} ganas de ir al bano
{vision|vista} {borrosa|doble|nublada|empanada|turbia|borosa|nublosa}
(lo |todo |estoy viendo |veo todo |yo ){veo|ve|viendo|ver} (todo |muy |medio |un poco |
  como ){borroso|doble|nublado|empanado|turbio|borozo|borrosa|mal de repente}
{ojos|vista} {nublados|borrosos|empanados|se me nubla|nublosos}
se me nubla {la vista|la vision|los ojos}, se me {nubla|empana|nublo|empano} la vista
{no veo|no puedo ver|no logro ver|veo poco} {bien|claro|clara}, borroso, borrosa, me cuesta ver
{vomito|vomitos|vomitando|vomite|vomito(s)|vomitar|vomita|vomite|vomitado|vomitamos|bomito
  bomitando|bomite|vomitona|arcadas|devolvi|devolviendo|devolver la comida|devuelvo|guacareando
  guacaree|arrojando|arroje|trasboque|trasbocando|buitree|buitreando|gomite|gomitando|gomitar
  basque|bascas|deponiendo|depuse|eche la comida|echando todo|huacareando|lanzando la comida
  lance la comida}
ganas de vomitar
dolor de {barriga|estomago|panza|vientre|abdomen|guata|tripa|pancita|estomago fuerte|tripas
  la barriga}
dolor {abdominal|estomacal|en el estomago|en la barriga|en el vientre|en el abdomen|en la panza
  en la boca del estomago}
dolores de {barriga|estomago|panza}
me duele {la barriga|el estomago|la panza|el vientre|el abdomen|la guata|la tripa|la pancita
  mucho la barriga|mucho el estomago|mucho la panza|la boca del estomago}
{retortijon|retortijones|colicos|colico|retorcijones}
{duele|dolia|doliendo} {la barriga|el estomago|la panza}
estomago {duele|adolorido|revuelto y dolor}
{respiracion|respira|respiro|respirando} (muy |esta |es ){rapida|rapido|profunda|profundo|agitada
  agitado|acelerada|acelerado|hondo y rapido|rapido y hondo|rapida y profunda|profunda y rapida}
{hiperglucemia|hiperglicemia|azucar alta|azucar muy alta|azucar por las nubes
  se me subio el azucar|se me subio la azucar|me subio el azucar|me subio la azucar
  se me sube el azucar|subida de azucar|me siento alta|siento el azucar alta
  me siento con el azucar alta}
cetonas (altas|positivas|en la orina), tengo cetonas
"""

_EMERGENCY_SPANISH: Final = """
    ni el agua {me|le} {para|dura|queda|aguanta}( en el estomago| adentro), no {me|le} para ni el agua
{no tengo|sin|perdi la|perdio la|no tiene} fuerza(s) en {el|la|mi|un|su} {brazo|pierna|mano|lado}, no me para ni {el agua|agua}, no me para nada en {el estomago|la panza|la barriga}
sin poder {retener|tragar} {nada|agua|liquidos|el agua|ni agua|comida}, sin retener {nada|agua|liquidos}
no abre los ojos, {cayo|cai} {redondo|redonda|como tabla|desmayado|desmayada}, no siento {la mano|el brazo|la pierna|la cara|media cara|un lado}, de repente no veo (nada)
no supe {nada|de mi|mas}, se privo, {se quedo|esta} {privado|privada}, me prive, se puso {tieso|tiesa|rigido|rigida}, incoherencias
no (me |nos |lo |la )reconoce a {sus|su|mi|mis|nadie|los|la}, no {puedo|puede} pasar (ni ){saliva|agua|la saliva|la comida|el agua|un trago}
{huelo|huele} a {acetona|quitaesmalte|manzana podrida|fruta podrida}
todo lo que {tomo|como|bebo|trago|toma|come|bebe} (lo |la ){devuelvo|vomito|regreso|boto|echo|devuelve|vomita|regresa|bota|echa}
{me desmaye|{me|se|nos} {acabo|acaba|acabe|acabamos} de {desmayar|desvanecer|desplomar|caer desmayado|caer desmayada}|acabo de desmayarme|acaba de desmayarse|acaba de caer desmayada|acaba de caer desmayado|me acababa de desmayar|me desplome|se desplomo|{perdi|perdio} el sentido|me desmalle|se desmallo|me desmalle|se desmaya|desmayada|desmayado|desmayo|desmayos|desmaye|se me desmayo
  me he desmayado|se ha desmayado|nos desmayamos|desvanecida|desvanecido|me desvaneci
  se desvanecio|desvanecimiento|perdi el conocimiento|perdio el conocimiento|perdi la conciencia
  perdio la conciencia|perdi la consciencia|perdio la consciencia|perdida de conocimiento
  perdida de conciencia|perdi el sentido|perdio el sentido|inconsciente|inconciente
  sin conocimiento|sin sentido en el suelo|sin conciencia|en coma|coma diabetico|entro en coma
  colapse|colapso|se desplomo|me desplome|desplomado|desplomada|cayo al suelo|se cayo al suelo
  cayo al piso y no|no responde|no reacciona|no esta respondiendo|no esta reaccionando|no esta respirando|no esta consciente|no esta conciente|no tiene pulso|no contesta y esta en el suelo|no se mueve|no respira
  dejo de respirar|labios azules|labios morados|se puso azul|se puso morado|se puso morada
  sin pulso}
no (se |lo |la |le |me ){despierta|despierto|puedo despertar|podemos despertar|quiere despertar
  logro despertar|puedo despertarlo|puedo despertarla|podemos despertarlo|podemos despertarla
  logro despertarlo|logro despertarla|logramos despertarlo|logramos despertarla|desperto
  despierta mi}
no hay quien {lo|la} despierte, imposible {despertarlo|despertarla}, no vuelve en si
no despierta
{convulsion|convulsiones|convulsiona|convulsionando|convulsiono|convulciones|convulcion
  combulsiones|combulsion|convulsionado|epilepsia ataque|ataque epileptico|ataque de epilepsia
  crisis epileptica|crisis convulsiva|un ataque y se sacude|echa espuma|espuma por la boca
  espuma en la boca|ojos en blanco|se le van los ojos|se sacude todo el cuerpo|le dio un ataque
  me dio un ataque|tuvo un ataque|confundida|confundido|confusa|confuso|confusion|desorientada
  desorientado|delira|delirando|delirio|alucinando|alucina|alucinaciones|dice incoherencias
  dice cosas sin sentido|habla incoherencias|habla sin sentido|no sabe donde esta
  no se donde estoy|no sabe quien es|no sabe quien soy|no me reconoce|no nos reconoce
  no reconoce a nadie|no sabe su nombre|no dice cosas coherentes|incoherente
  aturdida y no responde|perdida en el tiempo|somnolienta|somnoliento|somnolencia|muy dormida
  muy dormido|adormilada|adormilado|aletargada|aletargado|letargica|letargico|amodorrada
  amodorrado|modorra fuerte|semiconsciente|semi consciente|medio inconsciente}
{se queda|me quedo|se me queda} {dormido|dormida} {hablando|a cada rato|a medio hablar}
no {puedo|puede} {mantenerme|mantenerse} {despierto|despierta}
no {puedo|puede} {abrir los ojos|quedarse despierto|quedarme despierta|quedarse despierta
  quedarme despierto}
cuesta despertarlo, cuesta despertarla, cuesta despertarme
{arrastra|arrastro|arrastrando|arrastraba} {las palabras|la lengua|la voz}
{habla|hablo|hablando} {enredado|arrastrado|trabado|raro|mal de repente|enredada|pastoso
  como borracho|como borracha|sin que se le entienda|arrastrando}
{lengua|habla} {trabada|enredada|arrastrada}, se le traba la lengua, se me traba la lengua
se me enreda la lengua, no {puedo|puede} {hablar|hablar bien|articular|decir palabras}
no le salen las palabras, no me salen las palabras
no se le entiende {nada|lo que dice|al hablar}, dificultad para hablar
{cara|sonrisa|lado de la cara|media cara} (se le |se me |la tiene |la tengo |esta |de lado ){caida
  torcida|chueca|colgada|cayo|cae|torcio|tuerce|dormida|paralizada|desviada|de lado|virada}
se {le|me} {cayo|cae|torcio|tuerce|durmio|duerme|paralizo} {la cara|la boca|media cara
  un lado de la cara|un lado|la mitad de la cara}
paralisis facial
{brazo|pierna|mano|lado|lado izquierdo|lado derecho|un brazo|una pierna|medio cuerpo
  mitad del cuerpo} (esta |muy |esta muy |se siente |lo tengo |izquierdo |derecho |izquierda |
  derecha ){debil|dormido|dormida|sin fuerza|sin fuerzas|paralizado|paralizada|muerto|muerta
  entumecido|entumecida|adormecido|adormecida|flojo|floja}
no {puedo|puede} (mover |levantar |alzar ){el brazo|la pierna|un brazo|una pierna|la mano|un lado
  medio cuerpo}
debilidad en {un|el} {brazo|lado}, derrame, derrame cerebral, embolia, infarto cerebral, ictus
apoplejia, acv, trombosis cerebral, perdi la vista, no veo nada, se quedo ciega, se quedo ciego
me quede ciega, me quede ciego
no {puedo|puede|logro|logra|podia} {tragar|tragar nada|pasar saliva|pasar la comida|pasar nada
  deglutir|tragar agua}
dificultad para tragar, me cuesta tragar, le cuesta tragar, se atraganta, atragantada
atragantado, se ahoga, me ahogo, ahogandome, ahogandose, me estoy ahogando, se esta ahogando
ahogo, asfixia, me asfixio, se asfixia, se me cierra la garganta, garganta cerrada
garganta se cierra, dolor {en el|de|del|en} pecho
dolor {toracico|precordial|en el corazon|de corazon|opresivo|en el brazo izquierdo
  de brazo izquierdo|en la quijada|en la mandibula}
me duele {el pecho|mucho el pecho|el corazon|el brazo izquierdo}
le duele {el pecho|mucho el pecho|el corazon|el brazo izquierdo}, duele el pecho
{opresion|presion|apretado|apretazon|peso|punzadas|punzada|ardor y presion|pinchazo|pinchazos
  apreton|puntada|puntadas} {en el|del|de} pecho
pecho {apretado|me duele|oprimido|me aprieta|le duele|le aprieta}, me aprieta el pecho, infarto
ataque al corazon, ataque cardiaco, paro cardiaco, angina de pecho
no {puedo|puede|podia|logro|logra|consigo} {respirar|respirar bien|tomar aire|jalar aire
  agarrar aire|respirarme|coger aire}
{falta de|me falta|le falta|me falta el|le falta el|sin|sin poder tomar} {aire|aliento
  la respiracion|el aire}
{dificultad para|problemas para|trabajo para|dificultad al|me cuesta|le cuesta|cuesta|batallo para
  batalla para|problema para} (trabajo ){respirar|respirando|jalar aire|tomar aire|coger aire}
dificultad respiratoria, respiro mal, respira mal, respirando mal, no me entra el aire
no me entra aire, no le entra el aire, jadeando, jadea, sofocada, sofocado, sofoco y no respira
me sofoco, respiracion {dificil|dificultosa|entrecortada}, disnea, boqueando
{aliento|boca|respiracion} (que |le esta |con ){huele|hueles|olor} (como |raro a |
  dulce a ){acetona}
{boca|respiracion} (que |le esta |con ){oliendo|sabe|con olor} (a |como a ){acetona}
{boca|respiracion} (me |le ){oliendo|sabe|con olor} (como |raro a |dulce a ){acetona}
{aliento|boca|respiracion} (que |le esta |con ){oliendo|sabe|con olor} (como |raro a |
  dulce a ){acetona}
aliento {frutal|afrutado|a fruta|a frutas|a acetona|dulce|cetonico|a manzana|a manzanas
  a quitaesmalte|con olor a fruta|con olor a acetona}
{huele|olor} a {acetona|fruta|quitaesmalte} {la boca|el aliento|en la boca|su boca|mi boca
  su aliento|mi aliento}
me huele {la boca|el aliento} a {fruta|frutas|acetona|manzana|quitaesmalte|dulce|esmalte
  fruta podrida}
le huele {la boca|el aliento} a {fruta|frutas|acetona|manzana|quitaesmalte|dulce|esmalte
  fruta podrida}
no {retengo|retiene|tolero|tolera|aguanto|aguanta|retener} {nada|liquidos|el agua|agua|ni agua
  ni el agua|la comida|alimentos|ni liquidos|los liquidos}
no {puedo|puede|logra|logro} {retener|mantener|aguantar} {nada|liquidos|agua|el agua|la comida
  ni agua|los liquidos|ni el agua|alimentos}
{vomito|vomita|vomite|devuelvo|devuelve|devolviendo|vomitando} {todo|todo lo que como
  todo lo que tomo|todo lo que bebo|hasta el agua|sin parar|todo el dia|toda la noche
  todo el tiempo|a cada rato|cada rato|sangre|y no retengo nada|todo lo que toma|todo lo que come
  toda la manana|sin control}
no {paro|para|dejo|deja} de {vomitar|devolver|vomitando}
todo lo {vomito|vomita|devuelvo|devuelve}, confundida y vomitando, confundido y vomitando
{vomitando|vomito|vomita} y {confundida|confundido|confusa|confuso|somnolienta|somnoliento}
cetoacidosis, cetoacidosis diabetica, ni el agua me {queda|aguanta|cae}
{llamar|llame|llamen|llama|llamo|llamamos} {a la ambulancia|ambulancia|una ambulancia|al 911
  al 112|a una ambulancia|a emergencias|a urgencias}
necesito {una ambulancia|ambulancia}, manden {ambulancia|ayuda|una ambulancia}, es una emergencia
no me sale {la voz|el habla}, no me salen palabras, me muero, me estoy muriendo, se muere, se esta muriendo, sobredosis, quiero morir, quiero morirme
matarme, me quiero matar, ganas de {morir|morirme|matarme}, no (se )le entiend{o|e} {lo que habla|lo que dice|cuando habla}, suicidarme, quitarme la vida, {no quiero|ya no quiero} {vivir|seguir viviendo|estar aqui}
{no tengo|sin} {ganas de vivir|razones para vivir|razon para vivir}, no vale la pena vivir, no le veo (el |ningun ){sentido|caso} a {vivir|la vida|seguir}
{quisiera|quiero|prefiero} estar {muerto|muerta}, mejor {muerto|muerta}, quiero acabar con todo
dormir y no despertar, {pensando en|pienso en|ganas de} acabar con {esto|todo}, pastillas a proposito, hacerme dano, acabar con mi vida, cortarme las venas, {estarian|estaran} mejor sin mi
{aliento|boca} (me |le |que )(huele |con olor |oliendo |olor ){a|como a|a pura} {fruta|frutas
  fruta podrida|frutas podridas|acetona|quitaesmalte|quita esmalte|esmalte|manzana|manzanas|pera
  peras|removedor|thinner|solvente|dulce|chicle}
"""

#: Phrases for each level; a phrase stands under one level only.
SYMPTOMS: Final[Mapping[Suggests, Block]] = {
    Suggests.LOW: _with_shared(_LOW),
    Suggests.HIGH: _with_shared(_HIGH),
    Suggests.EMERGENCY: _with_shared(_EMERGENCY),
}

SYMPTOMS_SPANISH: Final[Mapping[Suggests, Block]] = {
    Suggests.LOW: Block(_LOW_SPANISH),
    Suggests.HIGH: Block(_HIGH_SPANISH),
    Suggests.EMERGENCY: Block(_EMERGENCY_SPANISH),
}

#: Too common alone. They count beside a symptom, after a word such as `very` or `suddenly`, or
#: while a low or a high is being followed up.
WEAK_SIGNS: Final[Mapping[Suggests, tuple[str, ...]]] = {
    Suggests.LOW: phrases(
        """
        headache, head ache, hungry, starving, irritable, cranky, moody, nervous, anxious, edgy
        sleepy, tired and weak, tingling, tingly, numb fingers, unwell, poorly, funny, off colour
        not right, strange, weird, rough, cold, shakes, the shakes, spins, wobbles, hambre, dolor de cabeza, irritable, nervioso
        nerviosa, ansioso, ansiosa, sueno, hormigueo, me siento mal
        """
    ),
    Suggests.HIGH: phrases(
        """
        thirsty, sick, tired, exhausted, sluggish, heavy, peeing, weeing, urinating, toilet, dry, blur, blurring, blurriness, blurred, sed, borrones
        cansado, cansada, orinando
        """
    ),
    Suggests.EMERGENCY: phrases("fits, strokes, ataques"),
}

#: Ordinary talk that holds a symptom's words.
NOT_SYMPTOMS: Final = Block(
    """
    {am|i'm|i am|be} cutting myself {a|an|some|another|one|two|the|off}
    {i|we|you} shake {him|her|them|it|hands|my head|off}
    air in {my|the|his|her} {tyres|tires|tyre|tire|balloon|ball|wheels}, {not|isn't|won't|doesn't} {answering|answer} {his|her|their|my|the|our} {phone|calls|texts|messages|door|call|emails}
    no (me ){contesta|contestan|responde|responden} {el telefono|el celular|los mensajes|mensajes|llamadas|las llamadas|mis llamadas|mis mensajes}
    {so|and|i|we|ill|i'll|so i|dont want to|don't want to|not going to} {won't|will not|wont|not} wake {him|her|them|up him|mum|dad}, {don't|dont|didn't|didnt} {want to|wanna|like to} wake {him|her|them|mum|dad}
    {i'm|i am|am} low {carb|risk|fat|income|key|sodium|salt|maintenance|energy|in}
    {blackout|blackouts} {here|at|since|all|today|now|area|tonight|this}, {there is|there's|theres|have|had|got|national|town} (a |another ){blackout|blackouts} {here|at|since|all|tonight|in|no}
    gasping for {a|an|my|some} {drink|cuppa|tea|cup|coffee|fag|smoke|beer|pint|brew|cigarette|snack|bite}
    {give|gives|gave|giving|given} {me|him|her|us} a heart attack, {nearly|almost} had a heart attack {when|laughing|at|seeing|because|over}
    me {dio|da} un infarto {la|el|las|los}, {breathe|breath} for laughing, me muero {de|por} {risa|hambre|ganas|sueno|miedo|calor|frio|verguenza|aburrimiento|amor|nervios|curiosidad|un|una|cansancio}
    se muere {de|por} {risa|hambre|ganas|sueno|miedo|calor|frio|verguenza}
    low {fat|carb|carbs|sodium|salt|sugar|calorie|cal|gi|income|battery|price|tide|heat|cost|key
      blow}
    {feel|feeling} low on {money|cash|energy drinks|strips|stock}
    {running|run|am|i'm|getting|we are} low on
    low on {strips|milk|food|sugar at home|cash|petrol|gas}, fainter
    shaky {handwriting|hand writing|camera}, shaken not stirred, {faint of heart|faint heart|faint hearted}
    {shelf|tent|roof|deal|cake|souffle|marquee|gazebo|stall|bridge|ceiling} (has |just |has just ){collapsed}
    risk of {fainting|fits|seizures|stroke|a stroke|strokes|heart attack|a heart attack|hypos|passing out|collapse}
    {murio|fallecio|murieron} de (un |una ){infarto|derrame|embolia|derrame cerebral}
    hubo (un )temblor(es), temblor(es) {en la ciudad|en mexico|en chile|de tierra|de magnitud}
    (a |the |very |really ){faint} {line|hope|smell|music|idea|noise|signal|text}, dizzy {kids|height|heights|blonde}
    shaky {video|table|internet|ground|connection|signal|start}, shake hands, shaking hands with
    milk shake, protein shake, shaking the {bottle|rug|tree|mat}, shaking my head, sweat shirt
    sweatshirt, sweatpants, sweat pants, sweaters, no sweat, don't sweat it
    weak {signal|tea|coffee|wifi|battery|network}, pale ale
    confused {about|by|with|what|how|which|why|when|where|if|whether|as to|on what|over}
    {bit|little} confused {about|by|with|what|how|which|why|when|where|if}, bit confused about
    confused the {numbers|two|times|units}, app is confusing, this confuses me
    a {black|power} out, power blackout, blackout curtain(s), black out curtains, blackout blinds
    pass out {leaflets|flyers|food|the|sweets|candy}, passed out {leaflets|flyers|food|the}
    passing out {leaflets|flyers|food|the|sweets|candy}, price collapse, building collapse
    roof collapse(d), bridge collapse(d), collapsed {chair|roof|bridge|tent|wall}
    the {chair|bed|shelf|wall|roof|bridge|tent} collapsed, collapsed into {bed|the sofa|my chair}
    throw(ing) up {ideas|a question|questions|errors}, stomach {exercises|muscles|crunches}
    cloudy {day|weather|sky|morning|today|outside}, foggy {day|weather|morning|outside|today}
    misty {morning|day}, blurry {photo|picture|pic|image|screenshot|camera}
    the {photo|picture|image|screen|pic|camera} is blurry
    {photo|picture|image|pic|camera} (is |came out |looks |was ){blurry|blurred}
    double {portion|shift|check|helping|dose}, breath of fresh air, take a deep breath
    took a deep breath, deep breathing exercise(s), deep breathing class, breathing exercise(s)
    breathing class, bated breath, throwing a fit, threw a fit, threw fits, throw a fit
    having a fit about, had a fit about, have a fit if, fit of {giggles|laughter}
    heart racing {movie|film|game}, chest of drawers, chicken chest, choking hazard, choked up
    heart attack grill, heartburn tablets, stroke of {luck|genius}, stroke the {cat|dog}
    breast stroke, breaststroke, back stroke, backstroke, drowsy {cat|dog|baby}, non drowsy
    non-drowsy, may cause drowsiness, sick {note|leave|day|of|pay|and tired of}, feel sick of
    sick day rules, sick {as a parrot|bay}, call {in sick|off sick}
    crashing {at|on} {my|the|his|her}, website crashing
    app {is crashing|keeps crashing|crashing|crashed}, phone (is |keeps ){crashing|crashed}
    computer crashing, car crash, went down {the|to|well|a treat|stairs}, dropped to
    shaking {him|her|them|it}, {foto|fotos|imagen|video|pantalla} {borrosa|borrosas|borroso}, giddy with {joy|excitement}, giddy kids, feel high and mighty, feel low {down|about|since {my|he|she|we|they|her|his|losing}}
    dropping fast {off|my kids}, hurling {match|final|game|team|practice}
    pounding {yam|fufu|the|maize|grain}, racing {heart rate monitor|track|car}
    sweating {onions|the onions|the small stuff}, sweat the onions, sweated the onions
    wee {walk|bit|bite|cup|snack|while|dram|lie|one|bit of|cup of|bowl of|plate of}, a wee
    high {five|street|school|chair|heels|fibre|fiber|protein|tea|time|hopes|blood pressure}
    high on {fibre|fiber|protein|life}, fire drill, the drop, trembling bells
    blackout(s) {in|because of|again no power|no power}, load shedding blackout, drench the salad
    {saw|seen|seeing|see} double {decker|deckers|the|that|what|trouble|yellow|rainbow|rainbows}, shook {a bit|a lot} of
    slurping, slurp, slurped, shook hands, shook hands with, trembling aspen, seizure of {goods|assets|drugs}, breathless with {joy|excitement}
    collapsed the {tent|pram|buggy|box|chair|umbrella}, passed out of {police|training|teachers|fire|naval|staff|cadet|nursing} {college|school|academy|training}, {fit|fits} of the giggles, se me {cayo|cae|caia} la cara de verguenza, {screen|display|ink|print|numbers|digits|label} {is|are|looks|look} (very |too |so |really |quite |a bit |getting ){faint|fainter}, the {cake|souffle|sponge|deal|business} collapsed
    {number|print|line|ink} is {faint|fainter}, {screen|display|text|telly|tv|window} is {blurry|blurred}, {do|are|can|could|will|does|is} {hypos|hypoglycaemia|hypoglycemia} {hurt|kill|matter|harm|happen|cause|damage|dangerous|bad|common|normal|serious|always|ever}
    {phone|laptop|battery|meter|tablet|engine|car|telly|tv} (has |just |has just ){passed out|fainted|collapsed|blacked out}
    heart attack {on a|in a|on the} {plate|bun|bowl|bucket|box|wrapper}
    {died|dead|death|passed|passed away} {of|from|with} {a|an|his|her|the} (massive |sudden |big |second ){heart attack|stroke|seizure}
    choking on {the|these|those|petrol|food} {prices|price|bills|fees}
    sweating over {my|the|this|these|an|that} {exam|exams|bill|bills|results|homework|deadline|interview|test|speech|maths}
    {me|le|les} falta aire {a|en} {la|las|el|los|mi|su} {llanta|llantas|rueda|ruedas|balon|pelota|goma|gomas|bici|neumatico}
    confundid{a|o} con {el|la|los|las|tu|tus|este|esta|estos|estas} {horario|horarios|mensaje|mensajes|pregunta|preguntas|app|aplicacion|numeros|instrucciones|medidor|fechas|fecha|cita}
    swaying {to|in the|with|along}, giddy up, fainting {goat|goats|couch}, passed out {of|from} {school|college|uni|university|the academy|the college|the army|the police|the navy|engineering|medical|nursing|youth|basic|training|boot|the police academy}, passed out {fliers|leaflets|sweets|snacks|plates|the plates|bulletins|programmes|papers|drinks|tea}, passing out {fliers|flyers|leaflets|food|sweets|candy|snacks|plates|bulletins|programmes|papers|drinks|tea|parade|ceremony}, pass out {fliers|papers|snacks|plates}, {street|suburb|town|city|area|village|neighbourhood|neighborhood|estate|block|house|district|office|island|whole place} (is |was |has |got |all ){blacked out|blackout}, blacked out {windows|window|blinds|van|car|glass}, {heart attack|seizure} {burger|sandwich|grill|cafe}, {drugs|drug|customs|asset|property|land|cargo|police} seizure, {blackout|blackouts} {again|everywhere|in|over|on}, was {shaky|dizzy|faint|sweaty} {saturday|sunday|monday|tuesday|wednesday|thursday|friday|yesterday} {, not since|not since}, me dio un ataque de {risa|tos|celos|hambre|llanto}, {temblar|temblo|tiembla} la tierra, gelatina temblorosa, {foto|fotos|imagen|video} (de la boda |de la fiesta |del cumple )(me )(nos )(salio |salieron |quedo |esta |se ve ){borrosa|borroso|borrosas}, {photo|photos|pic|picture} {come|comes|came|coming|turned} out (all ){blurry|blurred|fuzzy}, lights off( ,) blackout, in fits( of laughter), fell out laughing, falling out laughing, batting collapse, had (us|me|everyone|the whole room) in fits, sudado de {pollo|pescado|carne|costilla|res|cerdo}, ataque de {risa|celos|nervios de risa|tos}, no puedo tragar a {mi|ese|esa|la|el}, (me ){dejo|deja} sin aliento, {dejo|deja} temblando {la|el|mi}, temblo {bien |muy |bastante }fuerte, {precios|cuentas|alturas} {dan|da} vertigo, {had|having|have|throw|threw} a fit {about|over|because|at}, {give|gives|gave} (you|us|anyone|ye|yer man|him|her) a heart attack, {spewing|spewin|spew} {about|we|they|he|at|that|over}, shaking {beef|beans}, faint {tracks|line|lines|smell|light|signal|mark|marks|print|memory|hope|sound|scent|praise|stars|trail}, shaky {isles|start|camera|footage|video|hand held|ground}, dizzy {high|heights}, {feel|feeling|felt} low in {myself|spirit|spirits|mood|my mood}, {estuvo|fue|esta|estaba|es} de infarto, casi me {da|dio} un infarto {con|cuando|al|por}, {hubo|fue} (un ){sismo|terremoto}, {weak at the knees|weak knees} {for|when he|when she|over|thinking}, {makes|made|make} me {weak at the knees|dizzy with joy}
    {the |}jitters {about|before|over} {my|the|an}, {shaking|shakin|trembling|shivering} {with|wi|in} {laughter|laughing|rage|anger|excitement|joy}, trembling at the {thought|idea|sight}
    {dizzy|faint|giddy} with {joy|happiness|love|relief|excitement|success}, {had|have|having|such|what} a stroke of {luck|genius|good luck}
    {fainted|fainting|faint|collapsed|passed out} {when i saw|at|over|looking at} {the|my|that} {price|prices|bill|bills|cost|total}
    throw up {some|more|new|interesting|red} {ideas|questions|flags|suggestions}, choking on my words, choked with {emotion|tears}
    feeling low {because|about|after the|since {my|he|she|we|they|her|his|losing|mum|mom|dad}}, feel low because, sweaty {gym|session|workout|gym session|weather}
    jelly legs race, {price|prices|bill|bills|cost} {made|makes|make|nearly made} me {faint|dizzy|sick|pass out}
    """
)
