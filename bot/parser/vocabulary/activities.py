"""What the body does: words that say that it is over, and words that say that it is not.

A verb goes into `_VERBS` with its forms and is then known in every form, done and under way.
What is no verb (`stairs`, `bike ride`) goes into `_NOUNS` and is known after `a`, `did`
`for a`.
"""

from typing import Final

from bot.parser.vocabulary import Block, phrases

#: plain, past, -ing: one verb a group.
_VERBS: Final = """
trudge trudged trudging, plod plodded plodding, traipse traipsed traipsing, amble ambled ambling
yomp yomped yomping, clamber clambered clambering
scoot scooted scooting, skateboard skateboarded skateboarding, sledge sledged sledging
paddleboard paddleboarded paddleboarding, kneeboard kneeboarded kneeboarding, rappel rappelled rappelling
abseil abseiled abseiling, somersault somersaulted somersaulting, cartwheel cartwheeled cartwheeling
squat squatted squatting, lunge lunged lunging
spar sparred sparring, shadowbox shadowboxed shadowboxing, strim strimmed strimming, hoe hoed hoeing
walk walked walking, stroll strolled strolling, wander wandered wandering, hike hiked hiking
march marched marching, trek trekked trekking, jog jogged jogging, run ran running
sprint sprinted sprinting, trot trotted trotting, swim swam swimming, wade waded wading
paddle paddled paddling, row rowed rowing, kayak kayaked kayaking, canoe canoed canoeing
surf surfed surfing, dive dived diving, skate skated skating, ski skied skiing
cycle cycled cycling, bike biked biking, bicycle bicycled bicycling, pedal pedaled pedaling
pedal pedalled pedalling, dance danced dancing, waltz waltzed waltzing, twerk twerked twerking
garden gardened gardening, dig dug digging, weed weeded weeding, hoe hoed hoeing
rake raked raking, mow mowed mowing, plough ploughed ploughing, plow plowed plowing
plant planted planting, harvest harvested harvesting, winnow winnowed winnowing
thresh threshed threshing, sweep swept sweeping, mop mopped mopping, hoover hoovered hoovering
vacuum vacuumed vacuuming, vaccum vaccumed vaccuming, scrub scrubbed scrubbing
dust dusted dusting, clean cleaned cleaning, tidy tidied tidying, exercise exercised exercising
excercise excercised excercising, exersize exersized exersizing, train trained training
stretch stretched stretching, climb climbed climbing, box boxed boxing
wrestle wrestled wrestling, shovel shoveled shoveling, shovel shovelled shovelling
bowl bowled bowling, golf golfed golfing, shop shopped shopping
rollerblade rollerbladed rollerblading, rollerskate rollerskated rollerskating
snowshoe snowshoed snowshoeing, snowboard snowboarded snowboarding, sled sledded sledding
snorkel snorkeled snorkeling, snorkel snorkelled snorkelling, powerwalk powerwalked powerwalking
speedwalk speedwalked speedwalking, line-dance line-danced line-dancing
linedance linedanced linedancing
belly-dance belly-danced belly-dancing, tap-dance tap-danced tap-dancing, jive jived jiving
boogie boogied boogieing, windsurf windsurfed windsurfing, bodyboard bodyboarded bodyboarding
till tilled tilling, prune pruned pruning, scythe scythed scything, declutter decluttered decluttering
deep-clean deep-cleaned deep-cleaning, power-walk power-walked power-walking
speed-walk speed-walked speed-walking, hand-wash hand-washed hand-washing, bushwalk bushwalked bushwalking
tramp tramped tramping, orienteer orienteered orienteering, freewheel freewheeled freewheeling
deadlift deadlifted deadlifting, skip-rope skipped-rope skipping-rope, jazzercise jazzercised jazzercising
knead kneaded kneading, pace paced pacing, ramble rambled rambling, saunter sauntered sauntering
"""

#: plain, past, -ing of a verb that needs what stands after `:`.
_VERBS_WITH: Final = """
do did doing: {yoga|tai chi|taichi|taiji|chair yoga|qigong|qi gong}
do did doing: {pilates|zumba|aerobics|water aerobics|chair exercises}
do did doing: {chair yoga|armchair exercises|seated exercises}
do did doing: {sitting exercises|my exercises|exercises}
do did doing: {some exercise|my exercise|the exercise|leg exercises}
do did doing: {arm exercises|squats|push ups|pushups}
do did doing: {sit ups|situps|press ups|lunges|star jumps}
do did doing: {jumping jacks|planks|burpees|stretches|steps}
do did doing: {some stretches|my stretches|the stretches|cardio|weights|a workout}
do did doing: {my workout|crossfit|martial arts|karate|judo}
do did doing: {taekwondo|the stairs|stairs|laps}
do did doing: {some laps|my laps|lengths|some gardening|the garden}
do did doing: {gardening|yard work|yardwork|the yard|housework|house work|the housework|chores}
do did doing: {my chores|the chores|some chores}
do did doing: {the cleaning|some cleaning|the hoovering|hoovering}
do did doing: {the vacuuming|the laundry|laundry}
do did doing: {the washing|washing by hand|the shopping|the sweeping}
do did doing: {the mopping|the windows|physio|my physio}
do did doing: {physical therapy|line dancing|the treadmill|a class}
do did doing: {an exercise class|a dance class|an exercise video|the exercise bike|the elliptical}
do did doing: {my walk|the walk|a walk|my steps|a lap|the school run on foot|surya namaskar}
do did doing: {sun salutations|garba|bhangra|farm work}
do did doing: {field work|heavy lifting|a spin class|spin|bootcamp}
go went going: {for a walk|for walk|for a stroll|for a run}
go went going: {for a jog|for a swim|for a bike ride|for a ride}
go went going: {for a hike|for a dance|for a wander}
go went going: {for a long walk|for a short walk|for a quick walk}
go went going: {for a little walk|for my walk|on a walk}
go went going: {on a hike|on a bike ride|for a cycle|for a ramble}
go went going: {for a walkabout|for a march|for a wheel|for a roll in my chair|for a paddle}
go went going: {walking|running|jogging|swimming|dancing}
go went going: {cycling|biking|hiking|bowling|skating|skiing}
go went going: {to the gym|to gym|to zumba|to yoga}
go went going: {to the pool|to my exercise class|to aerobics|to tai chi}
go went going: {to dance class|to the dance|up the stairs|up and down the stairs|around the block}
go went going: {round the block|walkies}
go went going: {to the shops on foot|on foot to market|to the market on foot}
go went going: {on the treadmill|on the exercise bike|on my bike}
go went going: {out with the dog|out dancing|to football}
take took taking: {a walk|a stroll|a long walk|a short walk}
take took taking: {a quick walk|a little walk|a brisk walk|my walk}
take took taking: {a hike|a swim|a bike ride|a jog}
take took taking: {a run|a spin|the stairs|a dance class|a turn in the garden}
take took taking: {the dog for a walk|the dog out}
take took taking: {the {dog|dogs|pup|puppy} {round|around} {the block|the park|the field|the village}}
take took taking: {the {dog|dogs|pup|puppy|baby|kids|grandkids|grandchildren} {for a run|for a stroll|for a walk|to the playground}}
take took taking: {my {dog|dogs|pup|puppy} {out|for a walk|round the block|around the block}, the bins out and swept}
wait waited waiting: {tables|on tables}
take took taking: {the dog walking|the kids to the park|the dogs out}
have had having: {a walk|a stroll|a swim|a dance|a workout}
have had having: {a kickabout|a wander|a run|a good walk|a nice walk}
get got getting: {on the treadmill|on the bike|on my bike}
get got getting: {my steps in|some exercise|a walk in|a workout in}
walk walked walking: {the dog|the dogs|my dog|my dogs}
walk walked walking: {to work|to the shop|to the shops|to the store|to church}
walk walked walking: {to mosque|to the mosque|to temple|to the temple}
walk walked walking: {to market|to the market|to the park|home}
walk walked walking: {to school|to the bus stop|to the river}
walk walked walking: {to the well|to town|to the village|to the farm}
walk walked walking: {around the block|round the block|around the house}
walk walked walking: {in the mall|the mall|the hallway|up hill}
walk walked walking: {uphill|up the hill|up and down|on the spot}
walk walked walking: {in place|on the treadmill|on the beach|my rounds}
walk walked walking: {the corridor|the ward|with my walker}
walk walked walking: {with my frame|with my cane|with my stick|the kids to school}
push pushed pushing: {my wheelchair|the wheelchair|the pram}
push pushed pushing: {the stroller|the buggy|the cart|the pushchair}
wheel wheeled wheeling: {myself|my chair|around the block|round the park}
lift lifted lifting: {weights|dumbbells|boxes|bags|sacks|kettlebells|bricks}
play played playing: {football|soccer|cricket|basketball}
play played playing: {tennis|table tennis|ping pong|badminton|volleyball}
play played playing: {netball|hockey|rugby|golf|squash game}
play played playing: {baseball|softball|pickleball|handball|bowls|boules}
play played playing: {petanque|kabaddi|kho kho|frisbee|hopscotch}
play played playing: {tag|sepak takraw|lacrosse|shinty|hurling|camogie}
play played playing: {gaelic football|futsal|catch}
play played playing: {drums|in the park|outside with the kids|with the grandkids}
play played playing: {with the kids|with the children}
play played playing: {with the grandchildren|with my grandson|with the dog}
play played playing: {with my granddaughter|with my grandkids|with my kids}
play played playing: {tag with {the|my} {kids|grandkids|grandchildren}|hide and seek|twister|padel|squash|racquetball}
play played playing: {ultimate frisbee|water polo|dodgeball|kickball|wallball|marbles in the yard|tug of war|doubles|tennis doubles|singles|touch football|flag football|stickball|five a side|5 a side}
play played playing: {chase|ball|a match|a game of football}
climb climbed climbing: {stairs|the stairs|the steps|steps|the hill}
climb climbed climbing: {a hill|a mountain|the ladder|trees|coconut trees}
carry carried carrying: {lumber|timber|the lumber|planks|feed|hay|hay bales|sandbags}
carry carried carrying: {water|the water|firewood|wood|the shopping}
carry carried carrying: {groceries|the groceries|bags|sacks|the baby}
carry carried carrying: {bricks|boxes|buckets|buckets of water}
carry carried carrying: {loads|the wash|my grandchild|jerrycans|logs}
fetch fetched fetching: {water|firewood|wood|the water}
draw drew drawing: {water from the well}
chop chopped chopping: {wood|firewood|logs|trees}
cut cut cutting: {the grass|grass|firewood|the hedge|the hedges|sugarcane by hand|the lawn}
split split splitting: {wood|logs|firewood}
stack stacked stacking: {wood|firewood|shelves|hay}
pound pounded pounding: {yam|fufu|the yam|grain|maize|millet|cassava|rice in the mortar}
grind ground grinding: {maize|millet|grain|masala by hand|corn by hand|spices by hand}
wash washed washing: {clothes|clothes by hand|the clothes|laundry by hand}
wash washed washing: {the car|my car|the floor|the floors}
wash washed washing: {the windows|windows|the steps|the blankets|by hand}
hang hung hanging: {the washing|the laundry|out the washing|up the washing|out clothes}
sweep swept sweeping: {the floor|the yard|the compound|the house}
sweep swept sweeping: {the porch|the leaves|the stairs|the room}
mop mopped mopping: {the floor|the floors|the kitchen|the house}
scrub scrubbed scrubbing: {the floor|the floors|the bathroom|the tub|the pots|the steps}
clean cleaned cleaning: {the house|house|my house|the kitchen}
clean cleaned cleaning: {the bathroom|the windows|the yard|the flat|the garage}
clean cleaned cleaning: {the room|the rooms|my room|the gutters}
clean cleaned cleaning: {the floor|the church|the barn|the stable|up the yard}
make made making: {the beds|all the beds}
change changed changing: {all the beds|the beds}
mow mowed mowing: {the lawn|the grass|the yard}
rake raked raking: {leaves|the leaves|the yard}
shovel shovelled shovelling: {snow|the snow|the drive|the driveway|sand|manure}
shovel shoveled shoveling: {snow|the snow|the drive|the driveway}
clear cleared clearing: {snow|the snow|brush|the yard|the field}
pull pulled pulling: {weeds|up weeds|nets|the nets}
plant planted planting: {trees|the garden|seedlings}
plant planted planting: {rice all morning|the field|vegetables in the garden}
water watered watering: {the garden|the plants|the flowers|the crops}
trim trimmed trimming: {the hedge|the hedges|the trees}
dig dug digging: {the garden|the field|holes}
dig dug digging: {the bed over|potatoes in the field|a trench|the allotment}
work worked working: {in the garden|in the yard|on the farm}
work worked working: {in the field|in the fields|on the allotment|out}
work worked working: {in my garden|in the shamba|on the land}
work worked working: {at the gym|outside|in the milpa|in the chacra}
herd herded herding: {goats|cattle|sheep|cows|the goats|the cattle|the cows}
milk milked milking: {the cows|the goats|cows|goats|the cow}
feed fed feeding: {the animals|the cattle|the pigs|the horses}
muck mucked mucking: {out|out the stable|out the stables}
ride rode riding: {my bike|a bike|the bike|my bicycle}
ride rode riding: {a bicycle|bicycle|the exercise bike|the stationary bike}
ride rode riding: {a horse|my horse|horses|to work on my bike}
swim swam swimming: {laps|lengths|some laps|in the sea|in the pool|in the river|in the lake}
use used using: {the treadmill|the elliptical|the rowing machine}
use used using: {the exercise bike|the stairs|the pedal exerciser}
hit hit hitting: {the gym|the treadmill|the weights|the pool}
pedal pedalled pedalling: {my chair bike|the exercise bike}
march marched marching: {in place|on the spot|in my chair}
step stepped stepping: {in place|up and down}
dance danced dancing: {salsa|bachata|cumbia|merengue|samba}
dance danced dancing: {azonto|kizomba|bhangra|garba|in the kitchen|at church}
dance danced dancing: {to the radio|around the house|with the kids}
dance danced dancing: {at the wedding|at the powwow|hula|tango}
jump jumped jumping: {rope|on the trampoline|around}
skip skipped skipping: {rope|with a rope}
run ran running: {around with the kids|after the kids|after the grandkids}
run ran running: {up the stairs|on the treadmill|laps}
run ran running: {a mile|for the bus|around the park|after the children}
chase chased chasing: {the kids|the grandkids|the dog|after the kids|the chickens}
stand stood standing: {up and sat down ten times}
move moved moving: {furniture|the furniture|boxes}
move moved moving: {my body|house all day|about the house|around the house}
paint painted painting: {the fence|the wall|the walls|the house|the room|the ceiling}
build built building: {a fence|a wall|a shed}
load loaded loading: {the truck|the van|the lorry|boxes|bricks}
unload unloaded unloading: {the truck|the van|the lorry|boxes}
attend attended attending: {zumba|exercise class|a yoga class|aerobics|dance class}
practice practiced practicing: {tai chi|yoga|qigong|karate}
practise practised practising: {tai chi|yoga|qigong|karate}
go went going: {up and down the stairs|up and down the corridor|round the park|around the park|round the supermarket|round the shops|round the mall|round the market|around the mall|around the market|around the shops}
go went going: {to {karate|judo|boxing|training|pilates|swimming|aqua|aquafit|line dancing|bootcamp|crossfit|spin|parkrun|the allotment|rugby|cricket|netball|hockey|tennis|badminton|practice|dance practice|the physio class}}
go went going: {for {my|a|the} {morning|evening|daily|afternoon|lunchtime|night|brisk|nature|forest|beach|family|dog|power|nordic|hill|country|cliff|wee|bush|slow|fast|gentle|good|nice|lovely|big|proper|solo|charity|sponsored} {walk|run|jog|swim|ride|hike|stroll|wander|cycle|bike ride|march}}
go went going: {foraging|fishing|hunting|birding|paddling|trekking|hill walking|rambling|walkabout|sledding|sledging|roller skating|ice skating|horse riding|horseback riding|kayaking|canoeing|climbing|bouldering|geocaching|orienteering|mushroom picking|berry picking}
"""

#: Usable with a duration or a distance (`45 min in the garden`), or after `did`, `a`, `my`.
_NOUNS: Final = """
surya namaskar(s), {tarawih|taraweeh|night|friday|fajr|zuhr|asr|maghrib|isha} prayers
aqua fit, aqua-fit, aqua zumba, aqua jogging, aqua jog, deep water running, barre, barre class
body pump, body combat, body balance, step aerobics, spin bike, indoor cycling, jazzercise class
zumba gold, sit and be fit, chair zumba, chair dancing, walking football, walking netball
walking group, park run, parkrun, fun run, power walk, speed walk, walk and run, walk run, run walk
interval training, interval walk, treadmill walk, incline walk, stair master, stairmaster, rebounder
rowing, ergometer, row machine, ski machine, stepper machine
under desk bike, under desk pedals, desk treadmill, walking pad, hand weights
free weights, weights class, ankle weights, medicine ball, battle ropes, wall sits, wall sit
calf raises, glute bridges, deadlifts, bench press, leg press, leg day, arm day, chest day
core workout, abs workout, ab workout, home workout, video workout, exercise video, dance video
dance workout, just dance, wii {fit|bowling|tennis|boxing|golf|dance|sports}, dance off, ceilidh
ceilidh dancing, set dancing, irish dancing, highland dancing, morris dancing, clogging, contra dance
contra dancing, swing dancing, salsa class, bachata class, kizomba class, tango class, ballet
ballet class, tap class, jazz class, hip hop class, kathak, kathak class, bharatanatyam, odissi
dandiya, dandiya raas, garba night, giddha, lavani, lezim, dabke, dabkeh, halay, horon
sirtaki, kolo dancing, csardas, polka, waltz, siva, haka, tinikling, joget
zapin, lion dance, dragon dance, fan dance, yangko, yangge, plaza dancing
radio exercises, radio calisthenics, rajio taiso, baduanjin, eight brocades, wing chun, wushu
kung fu, aikido, kendo, capoeira class, muay thai, krav maga, jiu jitsu, silat, arnis
kabaddi match, gilli danda, gully cricket, net practice, cricket match
hurling training, hurling match, camogie training, gaa training, training session, rugby training
netball training, hockey training, {soccer|football|basketball|volleyball|netball|hockey|rugby|tennis|badminton
  cricket|pickleball|squash|padel|golf} {training|practice|match|game|session}
padel, squash match, racquetball, racketball, disc golf, frisbee golf, ultimate frisbee
crazy golf, driving range, croquet, bocce, boules, lawn bowling, ten pin bowling
dodgeball, kickball, water polo, waterpolo, sea swimming, sea swim, wild swimming
open water swim, cold water swim, {sea|river|lake|pool|morning} swim, stand up paddle
paddle boarding, paddleboarding, dragon boat, dragon boating, outrigger paddling, canoe paddling
fishing trip on foot, bouldering, climbing wall, via ferrata, canyoning, orienteering, geocaching
birdwatching walk, bird walk, litter picking, litter pick, beach clean, beach clean up
snow clearing, clearing snow, chopping firewood, splitting logs, stacking wood, stacking firewood
hay making, haymaking, lambing, shearing, fencing work, fencing, fence mending, mending fences, mucking out, horse grooming, barn chores
farm chores, yard chores, garden chores, morning chores, evening chores, milking, hand milking
goat herding, herding, ploughing, plowing, planting, transplanting rice, rice planting, harvesting
rice harvest, tea plucking, plucking tea, coffee picking, picking coffee, apple picking, fruit picking
grape picking, olive picking, berry picking, cotton picking, mushroom picking, foraging
potato digging, hedge trimming, hedge cutting, grass cutting, cutting grass, strimming, weed whacking
leaf blowing, pressure washing, window washing, car washing, floor washing, floor mopping
decluttering, decorating, wallpapering, plastering, tiling, bricklaying, roofing, carpentry
furniture moving, house move, packing boxes, unpacking boxes, carrying boxes, warehouse shift
shift on my feet, day on my feet, {on my feet|on me feet}, {on my feet|on me feet|on my legs} {all day|all morning|all afternoon|all night|for hours|the whole day}
pelvic floor exercises, balance exercises, balance class, falls class, cardiac rehab, pulmonary rehab
rehab exercises, rehab class, hydrotherapy, hydrotherapy class, physio class
toddler chasing, playground with {the kids|the grandkids|my son|my daughter}
push pram, pram walk, pram push, buggy walk, stroller walk, baby wearing walk
(a |my |the |an ){brisk|long|short|quick|slow|little|nice|good|evening|morning|lunchtime|night|dog
  daily|beach|nature|fast} walk(s)
(a |my ){walk|stroll|hike|jog|run|swim|dance|workout|work out|ramble|wander|bike ride|cycle ride
  bicycle ride|horse ride|walkabout|trek|march}
walkies, wak, wlk, wlaked, walkd, walkt, waling the dog, strol, excercises, exercize, excersise
exercices, jogd, swimed, swum, dansed, danse, walks, strolls, hikes, laps, lengths
laps of the pool, laps of the park, steps, step count, stair(s), flights of stairs
flight of stairs, stair climbing, stepper, step class, spin class, spinning, treadmill, tredmill
elliptical, cross trainer, rowing machine, exercise bike, stationary bike, chair bike
pedal exerciser, arm bike, hand bike, gym, the gym, gym session, at the gym, in the gym
workout session, gym class, spin class, zumba class, yoga, yoga class, chair yoga, tai chi, tai chi class, taichi, taiji
qigong, qi gong, pilates, aerobics, aqua aerobics, aquafit, water aerobics, aqua gym, zumba
exercise class, dance class, line dancing, ballroom, ballroom dancing, square dancing
belly dancing, salsa dancing, bhangra, garba, folk dancing, powwow dancing, hula, hula hoop
capoeira, boxing, kickboxing, martial arts, karate, judo, taekwondo, wrestling practice
chair exercise(s), armchair exercises, seated exercise(s), sitting exercises, bed exercises
leg lifts, arm circles, heel raises, sit to stands, sit to stand, resistance band(s)
stretch band, weights, dumbbells, weight lifting, weightlifting, weight training, kettlebell(s)
strength training, {chest|bench|leg|shoulder|overhead} {press|presses}, push ups, pushups, press ups, sit ups, situps, squats, lunges, planks, burpees
star jumps, jumping jacks, crunches, pull ups, stretches, stretching exercises, physio
physiotherapy, physical therapy, physio exercises, cardio, hiit, bootcamp, circuit training
calisthenics, warm up exercises, football match, football practice, football training
soccer practice
{shot|shooting|shoot} (some ){hoops|baskets}, a game of {football|soccer|cricket|basketball|tennis|badminton|golf|squash|rugby|netball
  volleyball|hockey|bowls|pickleball|table tennis|ping pong}
{3|4|5|6|7|8|9|11}-a-side( {football|soccer|hockey|rugby|netball|game})
({play|played|playing} ){3|4|5|6|7|8|9|11} {aside|asides|a side}( {football|soccer|hockey|rugby|netball|game}), five a side(s)
football, soccer, cricket, basketball, tennis, table tennis, ping pong, badminton, volleyball
netball, hockey, rugby, baseball, softball, pickleball, handball, lawn bowls, petanque, kabaddi
lacrosse, shinty, hurling, camogie, kickabout, round of golf
frisbee, in the garden, in my garden, garden work, gardening, yard work, yardwork, in the yard
farm work, farming, field work, in the field, in the fields, in the shamba, on the farm
on the allotment, {in|on|at} {the|my|our} {paddy|paddies|farm|field}, {in|on|at} {the|my|our} {cassava|maize|corn|rice|cocoa|yam|cotton|tea|coffee|banana|plantain|vegetable|tomato|potato|pepper|groundnut|peanut|sugarcane|cane|bean|wheat|sorghum|millet|pineapple|palm} {farm|field|fields|garden|plantation|patch|paddy}, {in|at} {the|my|our} allotment, allotment, {in|at} {the|my|our} {orchard|vegetable patch|veg patch|veggie patch|vineyard|greenhouse|vegetable garden|back garden|front garden|back yard|backyard}, weeding, digging, raking leaves, mowing, lawn mowing, leaf raking
snow shovelling, snow shoveling, wood chopping, chopping wood, hauling water, water carrying
yam pounding, housework, house work, housecleaning, house cleaning, spring cleaning
cleaning the house, hoovering, vacuuming, mopping, sweeping, scrubbing floors, floor scrubbing
washing by hand, hand washing clothes, laundry by hand, window cleaning, chores, household chores
bed making, moving furniture, dog walk(s), dog walking, school run on foot
walk to {work|school|church|the shops|the shop|the store|market|the market|mosque|the mosque
  temple|town|the park|the river|the well|the bus|the bus stop}
walk home, walk back, walk around {the block|the house|the mall|the park|the lake}
walk round {the block|the park}
walk with {the dog|my wife|my husband|my sister|my friend|the baby|the grandkids|my daughter
  my son|my walker|my frame}
mall walking, nordic walking, wheelchair push, wheeling, wheelchair basketball, bike, bicycle
on the bike, on my bike, on the treadmill, in the pool, pool exercises, up and down the stairs
up the stairs, kayaking, canoeing, rowing, skiing, cross country skiing, snowshoeing, ice skating
skating, surfing, horse riding, horseback riding, hill walking, rock climbing, bowling
trampoline, trampolining, skipping rope, jump rope, jumping rope, rope skipping
playing with the {kids|grandkids|children|grandchildren|dog}, physical activity, phys ed
pe class, exercise, exercises, excercise, exersize, activity, movement break
"""

#: Said of something that is over, whole.
_DONE: Final = """
{done|finished|completed|managed|just did|got done} {walking|my walk|the walk|my exercise
  exercising|my exercises|my workout|the workout|dancing|gardening|running|my run|swimming|my swim
  cycling|my steps|the stairs|yoga|zumba|jogging|the housework|cleaning|my class|the gym
  at the gym}
{back|home|just back|got back|came back|came in|just got back|returned|just in|back in} from {a|my
  the|a long|a short} {walk|stroll|run|jog|swim|hike|bike ride|workout|dance class|exercise class
  ride}
{back|home|just back|got back|came back|just got back} from {walking|the gym|gym|swimming|dancing
  zumba|yoga|football|cricket|tai chi|aerobics|the pool|the garden|the field|the farm|the shamba
  training}
been {walking|for a walk|out walking|gardening|in the garden|dancing|swimming|cycling|running
  jogging|cleaning|on my feet|to the gym|exercising|working in the garden|out with the dog|digging
  sweeping}
have {walked|danced|exercised|jogged|swum|cycled}
already {walked|exercised|danced|jogged|cycled|swam}, walked it off, walk done, workout done
exercise done, exercises done, steps done, yoga done, swim done, run done, dance done
stairs done, gym done, gardening done
"""

_UNDERWAY_LEADS: Final = """
going to, gonna, about to, (i )will, i'll, want to, wanna, plan to, planning to, intend to
off to, heading out to, heading off to, ready to, getting ready to, fixing to, finna, fixin to
have to, need to, hope to, hoping to, on my way to, let me, thinking to, trying to, try to
starting to, start to, i shall, may, might, should i, supposed to
"""
_UNDERWAY_ING_LEADS: Final = """
am, i'm, im, is, he's, she's, we're, are, we are, still, currently, now, right now, busy
in the middle of, start, starting, started, just started, going, keep, off, out, thinking of
thinking about, halfway through, middle of, while, be, am still, i'm still
"""
_UNDERWAY_TAILS: Final = """
now, right now, at the moment, at present, as we speak, later, tonight later, soon, in a bit
in a minute, tomorrow, after this
"""

_UNDERWAY_WHOLE: Final = """
{going|goin|gaun|gan|gawn|awa|awa oot|away|off|heading|headed|out|heading out|heading off|setting off|setting out|stepping out
  popping out|leaving|about to go|gonna go|going out|just going|i go} for {a|my|a quick|a short
  a long|a little|a brisk|the} {walk|stroll|run|jog|swim|bike ride|hike|ride|dance|wander|cycle}
{going|goin|off|heading|headed|heading out|heading off|on my way|gonna go|going out|about to go
  heading over|walking over} to {the gym|gym|zumba|yoga|the pool|exercise class|dance class
  aerobics|tai chi|the garden|the field|the farm|football|cricket|training|swimming|the allotment}
{time|ready} for {a|my} {walk|stroll|swim|jog|run|workout|exercise}
{on|in the middle of|halfway through} {a|my} {walk|run|hike|stroll|bike ride|workout|swim}
out {for a walk|on a walk|walking|with the dog}
{about to|going to|gonna|off to|will|i'll|must|have to} take {the|my} {dog|dogs|pup|kids|grandkids|baby} {out|for a walk|to the park}
{starting|start|beginning|about to start} {my|a|the} {walk|run|workout|exercise|exercises|swim
  dance|class|yoga|housework|gardening}
{at|in} the {gym|pool} now, walk now, walk first, walk later, walk time, exercise time, gym time
gym now, gym later, zumba now, yoga now, zumba later, yoga later, on the treadmill now
in the garden now, doing the stairs now, walk next, will walk after, let's walk
lets go for a walk, let's dance
"""

#: With an activity's word in them, and no activity.
NOT_ACTIVITY_PHRASES: Final[tuple[str, ...]] = phrases(
    """
    {dead|asleep|back|steady|unsteady|run off|rushed off|off} {on |}my feet, on my feet again, when i walked in, walked in {the door|from|on}, walk good, ran outta, running outta, ran {long|late|short|behind|hot|cold|slow|on and on|its course|dry|through my mind|a bath|the bath
    the tap|the water|errand|errands by car}, ran off, run off, ran away, run away, ran into, ran over, ran out, run out, running out, running low, running late, ran late, run down
    running a {fever|temperature}, ran a {fever|temperature}, runny nose, running nose
    runs in {the|my} family, the runs, in the long run, run by you, running water, runny eggs
    run my numbers, trial run, run that by, walk me through, walked out on, walk in clinic
    walk in at, walk in {clinic|centre|center|bath|shower|appointment|tub|wardrobe}, sleep walking, cake walk, walk of life, walking stick, walking frame
    can't walk, cannot walk, unable to walk, hard to walk, not walk, didn't walk, did not walk
    no walk, no walking, never walk, forgot to walk, too tired to walk, didn't exercise
    did not exercise, no exercise, haven't walked, have not walked, skipped my walk
    skipped the gym, missed my walk, didn't go for a walk
    sugar {climbed|jumped|danced|ran|jogged|is climbing|is running|running}
    (it |numbers |number |reading |readings |glucose |bg |levels ){climbed|jumped} to
    keeps climbing, jumping around, jumped up, jumped from, climbing since, next step(s)
    what step, which step, step by step, steps to, first step, step one, step 1, this step
    follow the steps, in steps, two steps back, take steps, step on the scale, stepson
    step mother, football on tv
    watch(ed|ing) {football|cricket|the football|the cricket|the match|the game|tennis|rugby
      a game}
    the gym is closed, gym membership, gym closed, gym shut, dance around the, train to
    train from, the train, by train, on the train, train ride, train station, bus ride, car ride
    taxi ride, ride to, boxing day, box of, boxes of, new box, a box, row of, in a row, cycle of
    menstrual cycle, my cycle, bowl of, bowls of, a bowl, salad bowl, dust allergy, weed killer
    fish bowl, squash soup, yard sale, garden peas, garden salad, farm eggs, field peas
    clean bill, cleaned me out, clean hands, cleaned my hands, washed my hands, wash my hands
    washing my hands, washed hands, wash hands, wash and dry, clean finger, train of thought
    workout tomorrow, swimming head, head swimming, head is swimming, play it safe
    play(ed) cards, play(ed) chess, play(ed) bingo, play(ed) dominoes, play(ed) the lottery
    shop for, plant based, plant food, strip(s) ran out, exercise caution, activity log
    activity tracker, stretch my budget, dive bar, surf the web, surf and turf, skip dessert
    skip lunch, skip breakfast, skip dinner, skip it, hike in price, price hike, march 1
    in march, on march, of march, march the, last march, this march
    """
)


def _forms_of(verbs: str) -> tuple[tuple[str, str, str], ...]:
    """Unfold a table of bare verbs into (plain, past, -ing)."""
    rows = (group.split() for group in verbs.replace("\n", ",").split(",") if group.strip())
    return tuple((plain, past, ing) for plain, past, ing in rows)


def forms_with(verbs: str) -> tuple[tuple[str, str, str], ...]:
    """Unfold a table of verbs and what they take into (plain, past, -ing), objects included."""
    forms: list[tuple[str, str, str]] = []
    for line in verbs.strip().splitlines():
        verb, _, objects = line.partition(":")
        plain, past, ing = verb.split()
        forms += [(f"{plain} {it}", f"{past} {it}", f"{ing} {it}") for it in phrases(objects)]
    return tuple(forms)


def _under_way() -> Block:
    plain, ing = ("|".join(row[form] for row in _BARE) for form in (0, 2))
    to_come = (row[2] for row in _FORMS if row[2].startswith(_GOING))
    built = (
        f"{{{_UNDERWAY_LEADS}}} {{{plain}}}",
        f"{{{_UNDERWAY_ING_LEADS}}} {{{ing}}}",
        f"{{{ing}}} {{{_UNDERWAY_TAILS}}}",
    )
    return Block("\n".join((*built, *to_come, _UNDERWAY_WHOLE)))


_GOING: Final = "going "  # `going for a walk` is still to come, whatever stands beside it
_BARE: Final = _forms_of(_VERBS)
_FORMS: Final = (*_BARE, *forms_with(_VERBS_WITH))

#: Over in themselves (`walked`), or over once a duration stands beside them (`45 min in the garden`).
ACTIVITIES: Final = Block(
    "\n".join(
        (
            *(past for _, past, _ in _FORMS),
            *(ing for _, _, ing in _FORMS if not ing.startswith(_GOING)),
            _NOUNS,
            _DONE,
        )
    )
)

#: About to begin or under way: ask when it is done. Longer than the phrase in `ACTIVITIES` that
#: each holds; the longer one decides.
ACTIVITIES_UNDERWAY: Final = _under_way()

#: As `ACTIVITIES`, in Spanish (Spain and the Americas).
ACTIVITIES_SPANISH: Final = Block(
    """
    # over: I did, we did, have done
    camino {hasta|alrededor|con su|con ella|con el|por|mucho|rapido|despacio|un rato|a paso|ida y vuelta|en el|en la|a la}
    corrio, bailo, troto, nado, pedaleo, {salio|fue|salimos} a {caminar|correr|pasear|trotar|bailar|nadar|dar una vuelta}
    fue al {gimnasio|gym}, hizo {ejercicio|yoga|zumba|pilates|caminata}, subio escaleras, {barrio|trapeo|limpio|lavo} {la casa|el patio|la cocina|el piso|los platos|la ropa|el carro|el coche|el auto}
    {monto|anduvo en} {bici|bicicleta},
    {camine|caminamos|he caminado|sali a caminar|fui a caminar|anduve caminando|caminando|caminar
      camino de|caminata(s)|paseo|pasee|paseamos|sali a pasear|fui a pasear|fui de paseo
      di un paseo|di una vuelta|dimos un paseo|dimos una vuelta|anduve|anduvimos|anduve a pie
      andando|a pie|vuelta a la manzana|vueltas a la manzana|vuelta en el parque|andar|corri
      corrimos|he corrido|sali a correr|fui a correr|corriendo|correr|trote|trotamos|trotando
      trotar|carrera|baile|bailamos|he bailado|fui a bailar|bailando|bailar|baile de salon|danza
      dance|danzamos|clase de baile}
    bailoterapia
    {baile|bailando|bailar} {salsa|cumbia|bachata|merengue|tango|flamenco|samba|huayno|marinera
      cueca|joropo|sevillanas}
    {nade|nadamos|he nadado|fui a nadar|nadando|nadar|natacion|piscina|en la piscina|en la alberca
      alberca|en la pileta}
    {monte|monte en|anduve en|sali en|paseo en|fui en|di una vuelta en} {bici|bicicleta|bici fija
      cleta}
    {bicicleta|bici|bicicleta estatica|bicicleta fija|bici estatica|pedalee|pedaleando|pedalear
      ciclismo|spinning}
    {subi|subiendo|subir|baje|subimos|subi y baje} {escaleras|las escaleras|gradas|las gradas
      escalones|el cerro|la cuesta|al cerro}
    {escaleras|gradas|escalones|pasos|caminadora|trotadora|cinta de correr|eliptica
      en la caminadora|en la cinta}
    (hice |haciendo |hacer |hicimos |he hecho |clase de ){ejercicio|ejercicios|gimnasia|yoga
      tai chi|pilates|zumba|aerobicos|aerobic|pesas|estiramientos|sentadillas|lagartijas|flexiones
      abdominales|cardio|deporte|aquagym|senderismo|rutina de ejercicios}
    ejercicio en silla, ejercicios en silla, ejercicios sentada, ejercicios sentado
    rehabilitacion, fisioterapia
    {me ejercite|nos ejercitamos|entrene|entrenamos|entrenamiento|entrenando|me estire
      levante pesas|fui al gimnasio|fui al gym|gimnasio|gym|en el gimnasio|en el gym}
    {jugue|jugamos|jugando|partido de|juego de} {futbol|a la pelota|pelota|basquetbol|baloncesto
      voleibol|tenis|padel|beisbol|frontenis|con los ninos|con mis nietos|con los nietos
      con mis hijos|con el perro|al futbol|bolos|bochas|petanca|ping pong}
    futbol, futbolito, cascarita, pichanga, basquet, voley, padel, partido
    {barri|barriendo|barrer|barrimos} (la casa|el patio|el piso|la calle|la banqueta|la vereda)
    {trapee|trapeando|trapear|fregue|fregando|fregar|coletee|trapeamos} (el piso|la casa|el suelo
      los pisos|los platos a mano)
    {limpie|limpiando|limpiar|limpiamos|asee|aseando} {la casa|mi casa|el patio|la cocina
      los vidrios|las ventanas|el bano|el piso|el cuarto}
    {hice|haciendo|hacer} {limpieza|la limpieza|los quehaceres|quehaceres|oficio|el aseo
      tareas de la casa|las camas|la cama|el jardin}
    limpieza, quehaceres, quehaceres de la casa, oficios de la casa, aspire, aspire la casa
    pase la aspiradora, pase el trapeador, pasando la aspiradora
    {lave|lavando|lavar|lavamos} {ropa|la ropa|ropa a mano|la ropa a mano|el carro|el coche
      el auto|a mano|los pisos|el patio}
    {tendi|tendiendo} {la ropa|ropa}, planche, planchando
    {trabaje|trabajando|estuve|trabajamos} {en el jardin|en la huerta|en el huerto|en el campo
      en la milpa|en la chacra|en el conuco|en la finca|en el patio}
    jardineria, en el jardin, en la huerta, en el huerto, en la milpa, en la chacra, en el conuco
    regue las plantas, regue el jardin, regue
    {corte|cortando|corte el|pode|podando} {el pasto|el cesped|el zacate|la grama|lena|los arboles
      la hierba|el jardin}
    {cargue|cargando|acarree|acarreando|traje|carge} {agua|lena|bultos|cajas|las bolsas
      las compras|al nieto|sacos}
    {siembre|sembre|sembrando|coseche|cosechando|are|arando|excave|cave|cavando|desyerbe
      deshierbe} (maiz|papas|frijol|la tierra|la milpa)
    {pasee|saque|paseando|sacando|sali con} {al perro|a los perros|el perro|la perra}
    paseo con {el perro|mi esposa|mi esposo|mi hija|mi hijo|mi hermana}
    {amase|moli|moliendo|moli el maiz|moli maiz|amasando}
    {camine|fui caminando|fui a pie} {al mercado|a la tienda|a misa|a la iglesia|al trabajo
      a la escuela|al parque|a la plaza}
    {salte|saltando|saltar} {la cuerda|la reata|la comba|la soga|el lazo}, patine, patinando
    remo, reme, remando, boxeo, boxee, caminata larga
    {termine|ya termine|acabe|acabo|acabe de|acabo de|ya} {de caminar|caminar|de bailar|bailar
      de correr|correr|de nadar|nadar|el ejercicio|de hacer ejercicio|hacer ejercicio|mi caminata
      la caminata|camine|baile|corri|nade}
    {regrese|volvi|llegue|vengo|recien llegue|regreso} {de caminar|de correr|del gimnasio|del gym
      de nadar|de bailar|de pasear|del paseo|de la caminata|de zumba|de yoga}
    """
)

#: As `ACTIVITIES_UNDERWAY`, in Spanish.
ACTIVITIES_UNDERWAY_SPANISH: Final = Block(
    """
    {voy a|vamos a|iba a|quiero|quisiera|pienso|ahora voy a|ya voy a|saldre a|por|a punto de
      estoy por|salgo a|saliendo a|tengo que|debo|ire a|me voy a|me toca|empiezo a|empezare a
      empezando a|listo para|lista para|manana voy a|luego voy a|al rato voy a} {caminar|correr
      bailar|nadar|pasear|trotar|andar en bici|montar bici|montar en bicicleta|hacer ejercicio
      hacer yoga|hacer zumba|hacer gimnasia|hacer limpieza|barrer|trapear|limpiar|lavar ropa
      salir a caminar|salir a correr|dar un paseo|dar una vuelta|dar una vuelta en bici|dar una vuelta en bicicleta|subir escaleras|jugar futbol
      jugar|entrenar|trabajar en el jardin|pasear al perro|sacar al perro|cortar el pasto
      regar las plantas|ir al gimnasio|ir al gym|ir a caminar}
    {estoy|estamos|ando|andamos|sigo|seguimos|ahora estoy|todavia estoy|aun estoy|ya estoy|empece
      esta} {caminando|corriendo|bailando|nadando|paseando|trotando|pedaleando|andando|barriendo
      trapeando|limpiando|lavando|lavando ropa|haciendo ejercicio|haciendo yoga|haciendo zumba
      haciendo limpieza|entrenando|jugando|jugando futbol|subiendo escaleras
      trabajando en el jardin|en la caminadora|en el gimnasio|en el gym|en clase de zumba|en bici
      cargando agua|regando}
    {voy al|voy para el|camino al|rumbo al|me voy al|salgo al|en camino al} {gimnasio|gym|parque
      jardin|campo}
    {estoy|estamos|ando} en {zumba|yoga|pilates|natacion|entrenamiento|la alberca|la piscina|la huerta|la milpa|el campo}, voy a {la piscina|la alberca|zumba|yoga|la huerta|la milpa|la clase de baile}
    {voy|salgo|saliendo|me voy} de {caminata|paseo}, {caminare|correre|bailare|nadare|paseare}
    {caminando|corriendo|bailando|nadando} {ahora|ahorita|en este momento}
    {caminata|paseo|ejercicio|zumba|yoga} {ahora|ahorita|luego|despues|al rato|mas tarde|manana}
    """
)

#: As `NOT_ACTIVITY_PHRASES`, in Spanish.
NOT_ACTIVITY_PHRASES_SPANISH: Final[tuple[str, ...]] = phrases(
    """
    en camino, de camino, el camino, un camino, del camino, camino a, camino al, camino de
    no camine, no pude caminar, no puedo caminar, no hice ejercicio, no corri, no baile
    no fui al gym, sin caminar, sin ejercicio, paso siguiente, proximo paso, siguiente paso
    que paso, paso a paso, futbol en la tele, partido en la tele, vi el partido, ver el partido
    viendo el partido, partido politico, de camino a casa en, a pie de, {of|had|ate|have|having|eating|made|just|in} a pie, lave las manos
    me lave las manos, lavarme las manos, manos lavadas, en el camino, me quede sin
    corri peligro, se corrio, baile de san vito
    """
)
