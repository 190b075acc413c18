"""Everyday words that say nothing the reader needs: beside an entry they are passed over.

A message that holds an entry and only such words besides is understood; any other word makes
the rest of the message doubtful. Written for this project.
"""

from typing import Final

from bot.parser.vocabulary import phrases

EVERYDAY: Final = phrases(
    """
    a, an, the, this, that, these, those, it, its, it's, i, i'm, i'd, i've, i'll, me, my, mine
    myself, we, we're, our, us, you, your, he, him, his, she, her, hers, they, them, their, who
    am, is, are, was, were, be, been, being, do, does, did, done, doing, have, has, had, having
    can, could, will, would, shall, should, may, might, must, get, gets, got, getting, go, goes
    went, going, come, came, coming, take, took, make, made, see, saw, seen, look, looks, looking
    say, says, said, tell, told, think, thought, know, knew, feel, feels, felt, feeling, try
    tried, need, want, like, let, put, keep, kept, give, gave, use, used, find, found, start
    and, or, but, so, if, because, cause, cuz, coz, since, while, when, where, why, how, what
    which
    than, then, though, although, as, at, by, for, from, in, into, of, off, on, onto, out, over
    to, toward, under, up, down, upon, via, with, within, without, about, around, across, along
    again, also, already, always, almost, any, anything, all, another, both, each, either, else
    enough, even, ever, every, everything, few, first, good, great, bad, better, best, worse
    fine, ok, okay, well, okie, nice, happy, sad, glad, hope, hopefully, here, there, just, last
    hypo, hypos, seizure, late, later, least, less, little, long, lot, lots, many, maybe, more, most, much, near, new
    next, no, none, not, nothing, now, old, once, one, only, other, own, perhaps, please, pls
    plz, probably, quite, really, right, same, second, several, short, simply, small, some
    someone, something, sometimes, soon, still, such, sure, thank, thanks, thing, things, time
    times, today, tomorrow, tonight, together, too, very, way, whole, whatever, yes, yeah, yeh, yep
    yup, yet, um, uh, erm, er, hmm, oh, ah, wow, omg, lol, haha, hey, hi, hello, dear, bot, btw
    fyi, doctor, doc, nurse, home, house, work, office, job, day, days, week, morning, afternoon
    evening, night, noon, early, hour, hours, minute, minutes, while, moment, phone, kitchen
    table, family, wife, husband, mom, mum, dad, kids, friend, friends, sister, brother, church
    party, restaurant, sunday, monday, tuesday, wednesday, thursday, friday, saturday, weekend
    blood, sugar, sugars, glucose, level, levels, reading, readings, number, numbers, result
    meter, test, tested, tests, testing, check, checked, checking, measure, measured, measurement
    value, score, stick, finger, fingers, wash, washed, hands, hand, clean, dry, clear, back, too
    around, roughly, approx, approximately, exactly, nearly, bit, high, low, normal, usual
    higher
    lower, down, stayed, dropped, rose, went, took, taken, seems, guess, hard, easy, quick, busy
    tired, sleepy, hungry, full, stuffed, slow, fast, big, quiet, hot, cold, weather, rain, sun
    record, log, note, noted, write, update, report, reporting, sending, send, sent, per, etc
    lunch, breakfast, dinner, snack, supper, meal, meals, food, eat, ate, eating, eaten, drink
    drank, before, after, during, until, till, ago, earlier, currently, recently, finally
    proud, excited, worried, surprised, relax, relaxing, relaxed, resting, rest, sat, sitting
    watching, tv, talk, talking, waiting, wait, left, arrived, finish, finished, happened, turn
    don't, didn't, doesn't, isn't, wasn't, won't, can't, couldn't, wouldn't, haven't, hasn't
    that's, there's, what's, here's, let's, he's, she's, they're, you're, gonna, wanna, gotta
    im, ive, ill, id, dont, didnt, its, thats, ya, yo, u, ur, r, n, w, y, k, bc, tho, abt, w/
    literally, actually, honestly, basically, anyway, anyways, damn, ugh, sorry, oops, yay
    mg, dl, mmol, sir, madam, mate, ma'am, maam, folks, guys, everyone, everybody, people, person
    three, two, four, five, half, quarter, full, couple, pair, third, part, side, end, top
    left, room, bed, woke, sleep, slept, sleeping, wake, awake, up, shower, work, working
    prick, pricked, poked, jabbed, lancet, strip, strips, shows, showed, showing, show, display
    displays, displayed, screen, machine, monitor, device, glucometer, y'all, folks, mate, bro, buddy
    finally, ding, phew, gosh, blimey, crikey, hmph, media, sec, minute, pic, photo, picture
    fore, appt, appointment, clinic, typed, txt, txting, texting, texted, text, message, msg
    stressed, stress, ill, crying, cried, rainy, sunny, windy, snowing, raining, anxious, upset
    angry, lonely, bored, grumpy, cranky, restless, achy, feverish, unwell, under, weather, exhausted
    knackered, shattered, pooped, chilled, calm, cheerful, grateful, blessed, disappointed, annoyed
    frustrated, nervous, scared, surprisingly, weird, strange, odd, amazing, lovely, brilliant
    landed, flat, ish, nap, naps, nowt, owt, summat, skipped, skipping, missed
    usual, mostly, mainly, especially, different, special, favorite, favourite, own, real
    started, starting, begin, began, stop, stopped, ready, soon, able, unable, forgot, remember
    help, emergency, thirsty, scary, rubbish, terrible, awful, horrible, fantastic, chuffed, gutted, annoying, shocking
    shocked, surprising, wtf, meh, whoops, sigh, grr, argh, brr, panic, panicking, panicked, urgent
    urgently, asap, poorly, rough, flu, covid, infection, pleased, delighted, perfect, excellent
    superb, steady, stable, abnormal, funny, interesting, typical, typically, unusual, unusually
    falling, rising, climbing, dropping, spiking, spiked, spike, crash, crashed, creeping, crept
    jumped, shot, improved, improving, improvement, worsening, worst, lowest, highest, range, limit
    pure, baltic, papa, average, precisely, definitely, certainly, absolutely, totally, completely, possibly, presumably
    apparently, obviously, clearly, evidently, supposedly, unfortunately, sadly, luckily, thankfully
    amazingly, strangely, oddly, weirdly, somehow, nevermind, however, therefore, despite, except
    unless, whether, either, neither, nor, instead, besides, otherwise, meanwhile, afterwards
    beforehand, holiday, holidays, birthday, wedding, christmas, easter, diwali, eid, funeral
    overnight, sooner, middle, previous, previously, twice, never, often, usually, rarely, normally
    generally, sometimes, occasionally, alone, outside, inside, indoors, outdoors, upstairs, yours
    ours, theirs, honest, promise, swear, true, false, correct, spare, borrowed, babe, babes, love
    sis, pal, chief, hun, bestie, mama, ma, boss, nan, auntie, uncle, cousin
    neighbour, neighbor, son, daughter, hospital, ambulance, pharmacy, chemist, surgery, school
    college, mosque, temple, gym, shop, shops, market, town, village, city, garden, sofa, couch
    armchair, bath, bathroom, thumb, thumbs, arm, toe, battery, case, bag, pocket, purse
    crazy, mad, wild, insane, ridiculous, silly, stupid, daft, dumb, mental, unreal, incredible
    unbelievable, wonderful, marvellous, marvelous, fab, fabulous, gorgeous, grand, sound, champion, cracking, smashing, ace, belting, mint, lush, decent, reasonable, acceptable
    tolerable, fair, fairly, mediocre, okayish, alrighty, aight, cool, nifty, neat, tidy, solid
    strong, weak, tough, difficult, simple, complicated, awkward, embarrassing, embarrassed, ashamed
    guilty, sorted, okey, dokey, righto, roger, understood, noted, agreed, deal, thankyou, blimey
    jeez, jesus, christ, lord, god, goodness, gracious, heavens, hell, heck, bloody, flipping
    freaking, fecking, effing, crap, crappy, shit, shite, bollocks, pants, dire, grim, bleak
    depressing, depressed, miserable, moody, teary, emotional, hormonal, period
    menopause, jetlag, jetlagged, hungover, hangover, drunk, sober, fasted
    peckish, bloated, sluggish, groggy, dozy, drowsy, lazy, energetic, lively, hyper, jittery
    rushed, rushing, hurry, hurried, panicky, worrying, worry, worries, concern, concerned
    concerning, alarming, alarmed, wondering, wonder, curious, clueless, puzzled, baffled, lost
    supposed, expecting, expected, unexpected, hoping, hoped, wish, wished, trying, managed
    decided, noticed, realised, realized, remembered, learned, learnt, promised, reckon, suppose
    believe, doubt, mean, means, meant, matter, matters, point, reason, problem, problems, issue
    trouble, difference, change, changed, changes, progress, success, win, winning, victory, result
    """
)
