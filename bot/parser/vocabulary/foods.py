"""Foods of many kitchens, each with its kind.

A new food goes into a block of the kitchen that it comes from (`foods_africa`, ...) or of
`foods_everyday`; docs/word-lists.md tells which kind is meant for what.
"""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind
from bot.parser.vocabulary import (
    Block,
    foods_africa,
    foods_americas,
    foods_east_asia,
    foods_europe,
    foods_everyday,
    foods_middle_east,
    foods_south_asia,
    foods_southeast_asia_pacific,
    gathered,
    phrases,
)

_KITCHENS: Final = (
    foods_everyday,
    foods_africa,
    foods_americas,
    foods_east_asia,
    foods_europe,
    foods_middle_east,
    foods_south_asia,
    foods_southeast_asia_pacific,
)

#: Every food, by kind; a phrase stands under one kind only.
FOODS: Final[Mapping[FoodKind, Block]] = gathered(kitchen.WORDS for kitchen in _KITCHENS)

#: Foods and drinks that are often something else: a name, a colour, a verb, a day.
#: Alone, in an odd place, they do not make a meal; each is in `FOODS` or `DRINKS`.
ALSO_NOT_FOOD: Final[frozenset[str]] = frozenset(
    phrases(
        """
        # pets, people, endearments
        pumpkin(s), honey, sugar, olive, ginger, sage, basil, rosemary, peach, cherry, cookie
        biscuit, candy, sweetie, sweeties, sweet, sweets, peanut, pepper, mochi, noodle, waffle
        muffin, cupcake, pickle(s), pickles, bean, beans, nugget, brownie, pudding, olives, apple
        kiwi(s), mango, plum, dill, clementine, doubles, angel food cake, taffy, toffee, caramel, fudge
        dumpling, sausage, crumpet, berry
        # colours, weather, things
        orange, lime, lemon, salmon, chocolate, mint, cream, olive oil, chestnut, coconut
        eggplant, corn, chili, chilli, curry, date, dates, currant, turkey, ham, jam, jelly
        toast, roll, bread, bun(s), chips, chip, fries, nuts, nut, seeds, egg, leaves, oil
        squash, fish, duck, goose, rabbit, crab, shrimp, snail, tongue, kidney, kidneys, liver
        ribs, steak, beef, veal, bacon, cheese, mustard, relish, sub, subs, wrap, wraps
        club sandwich, pie, cake, piece of cake, treat, treats, salt, spices, rocket, cress
        swede, mash, wedges, sliders, beet, leek, pea, peas, plaice, sole, perch, carp, cod, eel
        tripe, meat, baloney, mince, offal, gravy, dressing, stuffing, crust, icing, leftovers
        picnic, buffet, starters, patty, pate, crackling, dripping, mushroom(s), water, milk, tea
        coffee, juice, punch, cider, spirits, soda, malt, shake, mocha
        """
    )
)

#: Turns of speech with a food in them in which nothing is eaten.
NOT_FOOD_PHRASES: Final[tuple[str, ...]] = phrases(
    """
    {tea time|teatime} {reading|sugar|bg|test|check}, {high|good|great|low|poor|better} spirits
    {oh|aw|aww|ah|hiya|cheers|right|well} honey, honey {i|im|i'm|my|me|it|its|it's|the|this|could|can|please}
    {it's|its|is} a piece of cake, takes the cake, couch potato(es), spill(ed) the beans
    hill of beans, cool beans, cool as a cucumber, bring home the bacon, apple of my eye
    big apple, going bananas, {go|went} bananas, top banana, cherry picking, lemon of a car
    peaches and cream skin, blood orange moon, date night, blind date, up to date, out of date
    due date, expiry date, expiration date, start date, end date, what date, the date
    {mi|tu|su} mami, date of birth, new date, save the date, a date with, dated, first date, traffic jam(s)
    in a jam, stuck in a jam, paper jam, log jam, door jam, jam session, jam packed, talk turkey
    trip to turkey, in turkey, from turkey, to turkey, turkey the country, hi honey, hey honey
    thanks honey, ok honey, yes honey, honeymoon, my honey, hello honey, morning honey
    thanks sugar, hi sugar, hey sugar, blood sugar(s), sugar level(s), sugar reading(s)
    sugar test, sugar check, sugar number(s), sugar high, sugar low, sugar spike, sugar diary
    sugar log, sugar clinic, egg on my face, nest egg, egg timer, walking on eggshells, egg head
    fishing, went fishing, gone fishing, fish tank, fish pond, fed the fish, feed the fish
    poke {him|her|me|them|my finger|twice|again}, {before|after|at|to} uni, shake {him|her|it|them|hands|my head|your head|well|off}, something fishy, fish out of water, goldfish, pet fish, chicken out, chickened out
    feed the chickens, fed the chickens, spring chicken, chicken coop, chicken pox, chickenpox
    no spring chicken, ham radio, hammed it up, beef with, say cheese, cheesed off, cheesy joke
    {veg|veggie|vegetable|potato|bean|pumpkin|onion|herb|cabbage} {patch|patches|garden|plot|bed|beds}
    nuts about, {are|is|am|drive|drives|driving|going|went|gone} {me nuts|nuts|you nuts}
    tough nut, in a nutshell, nuts and bolts, breadwinner, best thing since sliced bread
    butter up, buttered me up, butterfly, stewing over, alphabet soup, pea brain
    two peas in a pod, salad days, souped up, pie in the sky, pie chart, humble pie, cutie pie
    sweetie pie, sandwich board, sandwich generation, sandwiched between, roll over, roll call
    bed roll, loo roll, toilet roll, toast to, a toast to, toasty, the best man toast
    chip on my shoulder, computer chip, micro chip, kidney clinic, kidney function, kidney doctor
    kidney test, kidney disease, kidney stone(s), kidney trouble, liver clinic, liver function
    liver test, fatty liver, bean counter, gravy train, pepper spray, salt lake city, ginger hair
    ginger cat, mint condition, mint green, sage advice, peachy, orange shirt, orange line
    orange juice stain, olive green, olive skin, lime green, salmon pink, chocolate lab
    chocolate brown, crab(by) mood, eye candy, smart cookie, tough cookie, cookies on this site
    accept cookies, browser cookies, web cookies, treat for low, treat a low, treated well
    sweet dreams, sweet of you, how sweet, so sweet of, that's sweet, home sweet home, sweetheart
    sweet talk, water the plants, watered the plants, water the garden
    watered the garden, water broke, water main, tea towel, not my cup of tea, coffee table
    coffee morning, wash in water, water aerobics, waterproof, smell the coffee, milk run
    big mouth, mouth full of, finger lickin, cream for my, hand cream, skin cream, face cream
    foot cream, sun cream, nappy cream, oil change, engine oil, cooking gas, bar of soap
    massage oil, fat finger, fat chance, pear shaped, bowl game, super bowl, rice cooker
    potato field, bean field, corn field, cornfield, maize field, rice field, rice paddy
    plum job, sugar daddy
    {buy|bought|sell|sold|sells|selling|buying} {bread|milk|eggs|rice|fish|fruit|vegetables
      tomatoes|meat}
    {peel|peeled|peeling|chop|chopped|wash|washed|cook|cooking|pound|pounding|stir|stirring} {the
      some}
    """
)
