"""What people say when they want something of the bot, by concept: `intents.py` tells which
concepts together make which request.

A phrase may stand under several concepts. `glue` holds what may stand between the words of a
request without changing it; a word that is under no concept at all makes the message something
else (`stop eating bread`, `record heat today`). Written for this project, from memory.
"""

from collections.abc import Mapping
from typing import Final

from bot.parser.vocabulary import Block

_BLOCKS: Final[Mapping[str, str]] = {
    "glue": """
        ah, wit, wid, widout, inna, di, dem, fi, mi, dis, dat, po, ma, mah, nga, ba, lah, leh, abeg, eh, ne, na, hen, pet, luv, duck, miss, nurse, doctor, doc, pls po, i, i'm, im, i am, i'd, i'll, i've, me, my, mine, myself, you, u, ya, you're, your, ur, we
        we're, us, our, it, its, it's, this, that, that's, these, those, them, the, a, an, of, on, in
        to, for, with, from, at, about, by, and, n, or, so, then, just, please, pls, plz, plez
        pleas, kindly, thanks, thank you, thx, cheers, hi, hey, hello, hiya, ok, okay, oh, well
        bot, dear, friend, mate, sir, ma'am, love, can, could, would, will, may, might, shall, do, does, did, is, are
        was, were, be, been, being, have, has, had, having, want, wants, wanna, wanted, need, needs
        would like, like, let, let's, lemme, get, gets, gotta, gonna, got, now, today, right, here, there, all, any, some
        again, too, also, still, really, very, much, more, anymore, any more, already, yet, ever, think, i think
        wish, wondering, if, possible, is it possible to, would you mind, mind, able, quick, quickly, out, up, as, into, through, over
        sorry, um, uh, er, hmm, yes, yeah, yep, guys, ask, asking, time, going to, looking, look, try, only, both, one
        also, maybe, perhaps, actually, honestly, seriously, completely, totally, absolutely, clean, for now, so far, at the moment, at present
        """,
    # things to do
    "see": """
        wetin be, wetin, wats, wat is, wat, wot, show, show me, see, view, check, display, send, give, tell, look at, list, get me, pull up
        bring up, read, read out, read me, open, print, print out, share, remind me of, remind me
        what, what's, whats, what is, what are, what were, what was, what did, where, where's, where is, know
        find, fetch, text me, message me, post, let me have, look over, go over, review, can you show, could you show, can you send me, could you send me, something to show, run through, provide
        """,
    "cease": """
        stop, stops, stopp, stahp, stp, stopping, quit, quitting, end, cease, cancel, halt, enough
        terminate, discontinue, withdraw, withdraw me, switch off, turn off, shut off, disable, block
        """,
    "cease_alone": "cease, stop, stopp, stahp, stp, stopping, quit, quitting, cancel, halt",
    "end_word": "end, enough",
    "never": """
        don't, dont, do not, never, no more, not, no, no longer, don't want, do not want, dont want, won't, stop it with
        without, not want, tired of, sick of, fed up with, had enough of, enough of
        """,
    "contact": """
        text, texts, texting, txt, txts, txting, message, messages, messaging, msg, msgs, write, writing, contact, contacting
        bother, bothering, bug, bugging, annoy, annoying, ping, pinging, pings, spam, spamming, send, sending, reminder
        reminders, reminding, remind, notification, notifications, notify, alert, alerts, prompt, prompts, prompting
        nag, nagging, disturb, disturbing, pester, pestering, harassing, hassle, hassling, asking, stuff, things, replies
        replying, questions, asking me, hear from you, hearing from you, mail, buzzing, {texting|messaging|text|message|calling} {my phone|this phone|this number}
        """,
    "program": """
        everything, all this, take part, taking part, participate, participating, be part, program, programme, bot, service, app, subscription, thing, plan, study, trial, project
        this whole thing, course, system, scheme, chat
        """,
    "stop_said": """
        {end|stop|finish|quit} this( {now|please|all}), wrong number (please ){stop|remove me}, unsubscribe(d), unsub, opt out, opt me out, opting out, {take|sign|get|drop|cut} me off( {the|this|your} list| this)
        {take|remove|strike|cross} me {off|from} {the|this|your} list
        remove me from {this|here|the program|the programme|the bot}, i quit, i want out, count me out, leave me alone
        leave me be, let me be, go away, i'm done with {this|you|it}, i am done with {this|you|it}, im out
        i'm out, i want to leave, leave the program, leave the programme, want to drop out
        drop out, dropping out, sign off, unenroll me, don't want to do this( {any more|anymore})
        do not want to do this( {any more|anymore}), not interested( {any more|anymore}), no longer interested
        shut up, get lost, lose my number, i no want again, no want again, abeg stop, stop dey text me, stop stop, stop it, stop all, stop this, stop already
        """,
    "hold_on": "hold on, hold up, hang on",
    "over": "over, finished, ended, done",
    "skip": "skip, hold back",
    "quiet": "quiet, silence, peace, no noise, shh, shhh, shush, hush, zip it, silent",
    "off_work": "off, free",
    "off": "off, turn off, switch off, shut off",
    "hold": """
        leave off, knock off, hold off, lay off, back off, go easy, ease off, pause, paused, pausing, pauze, puase, on hold, hold, put {it|this|everything|all this|messages|texts} on hold, mute, mutes, suspend, freeze, snooze the messages, take a break, snooze until, snooze till, snooze for
        time out, timeout, put on hold, take a rest, halt for now, break
        """,
    "respite": """
        need a break, give me {a few|some|two|three} days( off), give me a week( off), want a break, need a little break, need a short break, have a break, take a little break
        take a short break, a break from, week off, days off, day off, some time off, time off, couple of days off
        give me a break, a breather, need a rest from this, take some time off, break please
        """,
    "span": """
        day, days, week, weeks, month, months, weekend, a while, while, a bit, bit, few, couple, until, till, til
        til then, til i'm back, till i'm back, until i'm back, monday, tuesday, wednesday, thursday, friday, saturday, sunday, mon, tue, wed, thu, fri
        sat, sun, tomorrow, next, this week, for now, january, february, march, april, may, june, july
        august, september, october, november, december, th, st, nd, rd, fortnight, end of
        coming, several, tonight, today, one, two, three, the end of the week, further notice, new year, christmas
        ashore, back ashore, back on land, after, ramadan, xmas, lent, diwali, exams, easter, eid, rest of, return, am back, get back, i'm home, i am home, home, i'm better, i feel better, i say, i say so
        """,
    "away": """
        holiday, holidays, vacation, guests, visitors, i have guests, we have guests, in hospital, hospital, away, travelling, traveling, on leave, trip, abroad, out of town, hospital stay
        going on holiday, going on vacation, going away, on holiday, on vacation, going, am, off to, busy, because
        while i am away, on a trip, funeral, wedding, exams, family
        """,
    "again": """
        again, back on, once more, anew, afresh, restart, from now on
        """,
    "start_word": "start, back, active",
    "start": """
        start, starting, begin, beginning, continue, continuing, go, going, get going, carry on, go on, keep on, send
        sending, text, message, write, resume, turn, switch, sign me up, start up, pick up, remind, ask, prompt, testing
        """,
    "resume_said": """
        resume, resuming, resumed, restart, unpause, un pause, unmute, continue, carry on, keep going, keep on, start again, begin again
        start over, {pick|carry} {up|on} where we left off, i'm back, im back, i am back, back again, we're back, i'm back again, take me off pause
        reactivate, re-activate, wake up bot, let's go again, go on, start back up, start up again, back in action, ready to resume, restart it
        """,
    "returned": "i'm back, im back, i am back, back, home again, returned, back from",
    "ready": "ready, ready to go, all set, good to go, happy to, keen to",
    "allowed": "can, may, you can, you may, please, could",
    # things to see
    "summary_said": """
        summary, sumary, summery, summaries, weekly summary, digest, overview, recap, recap of, round up, roundup
        report, weekly report, week report, chart, charts, graph, graphs, plot, stats, statistics, progress
        {how many|how often} {readings|tests|checks|numbers|times} {have i|did i} {done|sent|logged|taken|got|do|send|log|tested|test}, average, averages, trend, trends, pattern, patterns, sum up, results, outcome, performance, summarise, summarize, picture of my week
        update on my week, highlights, my week, weekly, report card, scorecard, mean
        """,
    "week_word": "this week, week",
    "week": """
        week, weekly, this week, last week, past week, week's, weeks, month, the week, seven days, 7 days, days, past, last
        so far, overnight, today, recently, lately, fortnight, since i started, until now, up to now, numbers, sugars, sugar, readings
        """,
    "fare": """
        how {did|do|does|is|are|was|were|has|have} my {sugar|sugars|glucose|numbers|readings|blood sugar|levels|level|results} {do|done|doing|go|going|look|looking|been|get on|behave|fare|come out|coming along}, how my {sugar|sugars|numbers} {doing|dey|de do|go}, hows {ma|my} {sugar|sugars|numbers} {looking|lookin|doing|doin}, how i dey do, how i dey go
        what did my {sugar|sugars|glucose} do, how am i doing, how'm i doing, how have i done, how have i been doing, how have i been, how did i do, how did i get on
        how am i getting on, how am i going, how am i progressing, how am i coming along, how'd i do, howd i do
        how well am i doing, how well did i do, how i am doing, how i'm doing, how im doing, how i did, how i have done
        how are we doing, how is it going with my sugar, how'm i getting on, am i doing {ok|okay|well|good|alright|all right|better|fine}
        did i {improve|do better|get better|make progress|get worse}, am i on track, am i on the right track, am i improving, am i getting better, am i making progress, any progress, any improvement
        how are my {numbers|sugars|readings|results}( {looking|doing|going}), how do my {numbers|sugars|readings} look
        how was {my|the|this|last|the last|the past} week, how's my week, hows my week, how is my week, how has my week, how did {my|this|the|last} week go
        how {my|this|the|last} week {went|was|is going}, what does my week look like, what did my week look like, how were my {numbers|sugars|readings}
        show me how i did, how i did this week, how has {my|this|the} {week|month} been, how has {my sugar|my sugars} been, how have my {numbers|sugars|readings} been, how is my sugar doing, how is my {progress|sugar control|control}, how's my {progress|sugar}
        how were my {numbers|sugars|readings}, was my week {good|ok|okay|bad}, did i do {well|ok|okay|good|better}, how far have i come, how am i faring
        """,
    "record_said": """
        {full|whole|entire|complete} {record|records|history|log|diary}
        record, records, log, logs, logbook, log book, history, diary, journal, entries, past readings, previous readings, past numbers
        previous numbers, old readings, earlier readings, last reading, last readings, latest reading, latest readings, last number, last numbers
        recent readings, recent numbers, past meals, last entries, last few readings, last entry, record book, printout, print out, list of readings, list of my readings
        """,
    "mine": """
        {my|all my} {breakfasts|lunches|dinners|suppers|snacks}, my readings, my numbers, my sugars, my results, my meals, my entries, my tests, my levels, my glucose readings, my values, all readings, all my readings
        all the readings, all my numbers, all my meals, all my tests, the readings, my sugar readings, my blood sugars, my blood sugar readings, readings, my walks
        """,
    "logged": """
        what have i {logged|sent|written|recorded|told you|eaten|reported|entered|put in|texted|given you|saved|noted}
        what i have {logged|sent|written|recorded|told you|eaten|reported|entered|put in|texted|given you|saved|noted}
        what i've {logged|sent|written|recorded|told you|eaten|reported|entered|put in|texted|given you|saved|noted}
        what i {logged|sent|wrote|recorded|told you|ate|reported|entered|put in|texted|gave you|saved|noted}
        what did i {log|send|write|record|tell you|eat|report|enter|put in|text|give you|save|note|have}
        everything i {logged|sent|wrote|recorded|ate|reported|entered|have sent|have logged|told you}, everything i've {logged|sent|recorded|told you}
        what was i {before|after} {lunch|dinner|breakfast}, what have you got {so far|for me|for today|from me}, what was my {sugar|reading|number|result|glucose|blood sugar|level}, what were my {sugars|readings|numbers|results|levels}
        what have you {written down|noted|noted down|logged|recorded|saved|stored}( {for me|so far|down}), what you have {written down|noted|logged}( so far), what did you {write down|note|save|record|log}
        """,
    "day": """
        today, yesterday, this morning, last night, so far, this week, last week, this month, last month, week, month, on, monday, tuesday
        wednesday, thursday, friday, saturday, sunday, last, past, days, before, earlier, before lunch, after lunch, before dinner, after dinner
        before breakfast, after breakfast, for breakfast, for lunch, for dinner, from yesterday, until now
        """,
    "extreme": "best, worst, highest, lowest, biggest, top",
    "clinic": """
        doctor, doc, gp, nurse, clinic, doctor's, dr, appointment, physician, surgery, consultant, dietitian, educator, care team, visit
        """,
    # goals
    "goals_said": """
        goal, goals, target, targets, aim for, aiming for, be aiming for, {should|do|must} i aim for, should i be aiming for, am i aiming for, limits, target range, goal range, target zone, my limits
        """,
    "value": """
        number, numbers, reading, readings, sugar, sugars, sugar level, sugar levels, blood sugar, blood sugars, blood glucose, glucose, level
        levels, range, result, results, it, value, values, bs, bg, score, score on the meter, figures, figure, glucose level
        """,
    "ideal": """
        normal, good, healthy, ideal, okay, ok, safe, right, acceptable, best, perfect, fine, recommended, supposed to be, should be, should, expected, in range
        too high, too low, high, low, considered high, considered low, considered normal, counts as high, counts as low, meant to be, supposed, ought, desirable
        """,
    "asks": """
        wats, wetin, wetin be, what, what's, whats, what is, what are, where, how's, hows, how, which, tell me, do you know, remind me, remind me what, wat, wot, show, show me, whts
        """,
    "limit": """
        what am i aiming for, what should i {be aiming|aim} for, what {number|numbers|range|reading|level} {am i aiming for|should i aim for|should i be aiming for|should i be|should i have|should i see|should i be at}
        where should {it|i|my sugar|my sugars|my numbers|my readings|my glucose} be, what should {it|i|my sugar|my sugars|my numbers|my readings|my glucose|my blood sugar|my number|my reading} be( at)
        how high is too high, how low is too low, what is too high, what is too low, what's too high, what's too low, whats too high, whats too low
        what is {high|low}, {what is|what's|whats|wats|wat is} (a |the )normal( {range|reading|number|level|sugar|one}), what's considered {high|low|normal|good}, what is considered {high|low|normal|good}, what counts as {high|low|normal|good|a low|a high}, what would be {too high|too low}
        how high {can|should|may} it {be|go}, how low {can|should|may} it {be|go}, when is it too {high|low}
        """,
    "occasion": """
        before, after, before meals, after meals, a meal, meals, meal, eating, i eat, food, breakfast, lunch, dinner, supper, fasting, in the morning
        morning, bed, bedtime, at bedtime, two hours, 2 hours, hours, two, hour, at night, waking, when i wake up, on waking, someone my age, diabetic, diabetics, diabetes, type 2, person
        """,
    # steps
    "next_said": """
        next step, nxt step, next stage, next phase, next challenge, next task, next level, next part, next lesson, next one, next thing, the next, next activity, next bit
        am i (still ){on|at} step, what's the next {thing|step|one}( {to try|to do}), whats the next {thing|step|one}, what's next, whats next, what is next, what next, what comes next, what happens next, what's coming next, whats coming next, where next
        what {do|should|can|shall} i {do|try|start|change} next, what {do|should|can|shall} we {do|try|start|change} next, what to {do|try} next
        move on, moving on, next please, go to next, when {do|should|must|shall} i {test|check|measure|prick} next, when is {my|the} next {test|check|reading|one}, when's {my|the} next {test|check|reading|one}, when next, next test when, what am i supposed to do now, what now for me, what step am i on, which step am i on, what stage am i at, which step is this, what is my step, what's my step, whats my step
        what is my current step, what's my current step, current step, further step, step up, what now after this step, move forward, next week's step, skip to next step
        """,
    "step_done": """
        i'm done with {this|the|my|that} step, im done with {this|the|my|that} step, {finished|completed|done|did} {this|the|my|that} step, done with {this|the|my|that} step, finished with {this|the|my|that} step, {this|the|my|that} step is {done|finished|complete|over}
        step done, step {complete|completed|finished}, {finished|completed} step {one|two|three|1|2|3}
        """,
    "next_word": "next, nxt",
    "stepping": """
        ready, start, begin, go, take, move, try, do, continue, am i ready, ready for, go on, go ahead, onto, on to, take me, done, finished, move me, get, step, what's, what, when, explain
        """,
    # help
    "help_said": """
        help, helpp, hlp, halp, assist, assistance, instructions, instruction, commands, command, menu, options, list of commands, guide, manual, tutorial, examples
        example, user guide, info, information, how to, faq, guidance, explain, explanation, support, tips
        """,
    "lost": """
        i'm new, im new, i am new, i'm new here, i'm new to this, i'm lost, im lost, i am lost, lost, i'm confused about, confused about, confused, i'm stuck, im stuck, i am stuck, i don't get it, i dont get it, i don't understand, i dont understand
        do not understand, don't understand, dont understand, not sure, no idea, don't know, dont know, do not know, unsure, clueless, puzzled, don't get, never used
        i don't know, i dont know, not understanding, i have no idea, idk, no clue
        """,
    "using": """
        wat, wot, wht, how, how do i, how to, what, what to, what do i, what do you, what can you, what can i, what should i, what am i supposed to, use, using, works, work, working, do, send, sending, text, type
        write, say, ask, log, report, enter, record, tell, put, add, send in, next, start, started, get started, reading, readings, meal, meals, number, numbers, sugar, walk, food, my walk, activity, words, stuff, share
        do here, understand, know, commands, options, begin, message, supposed, should, explain, teach, teach me, show, give, list, mean
        """,
    "how_used": """
        how does {this|it|that|the bot|this thing|this bot|all this|everything} work, how {this|it|the bot|this thing} works, how do you work, how {do|can|should|would} i {use|log|send|report|enter|record|write|text|type|start|begin|work|tell you|add|put in|get started|submit}
        how to {use|log|send|report|enter|record|write|add}, how am i supposed to {use|do|log|send}, what can you do, what do you do, what can i {do|say|send|text|type|ask|write|tell you|use|ask you}, what {do|should|must|shall} i {say|send|text|type|write|tell you|put|do|enter|report}, what am i supposed to {send|write|say|text|type}
        what to {do|send|write|say|text|type}, what are you( for), who are you, who is this, who's this, whos this, what is this( {for|thing|bot|number}), what's this( {for|thing|bot}), whats this( {for|thing|bot}), what {words|commands} can i use, what else can {you|i} do
        what are my options, what can i ask, what are the commands, are you a {robot|bot|person|real person|human|machine|computer}, what is this all about, what's this all about, how do i begin, how do i start, what do you need from me, what do you want from me, what do you want me to {do|send}
        i don't know {what|how} to, what are you able to do, is this a {robot|bot|person|real person|human|machine|computer|scam}, am i talking to a {robot|bot|person|real person|human|machine|computer}, what do you mean, what does {that|this|it} mean, which commands, tell me what you can do, how {this|it} is used, what now, i'm lost, i am lost, i'm stuck, i am stuck, {i don't|i do not|don't} {understand|get} {this|it|any of this|anything}, i don't understand, show me how, teach me how
        """,
    # data
    "export_said": """
        {email|mail|e-mail|forward} me {everything|it all|all of it|all my data|my data|my records|my readings|my numbers}, {see|show me|view|access|have} everything you {have|hold|keep|know|store}( {on me|about me}), export, exporting, download, downloading, csv, spreadsheet, excel, fhir, pdf, backup, copy of {everything|all|it}, data export, exported, downloadable, file, files
        copy, copies, printable record
        """,
    "data": """
        data, all my data, information, info, everything you have, all you have, everything, readings, records, record, my file, all of it, everything on me, all the data, log, history, entries, what you have, numbers, all that you have, everything about me, account
        """,
    "own_data": "{my|all my|all of my|our|the} data, my file, my files",
    "hand": """
        send, give, get, have, want, email, mail, need, like, receive, e-mail, take, hand over, hand me, forward, mail me, make, make me, save, obtain, request, access, see, could i have, can i have
        """,
    "held": """
        you have, you hold, you keep, you store, you know, you got, have you got, do you have, you've got, about me, on me, on file, stored, of me, saved, kept, collected, you have collected, you keep
        """,
    "wipe": """
        erase, erased, erasing, , delete, deleted, deleting, remove, removed, removing, wipe, wiped, clear, cleared, destroy, destroyed, get rid of, forget, purge, scrub
        gone, removal of, deletion of, trash, drop, scrap, close, deactivate, cancel, lose, clean out, wipe out, discard
        """,
    "all_data": """
        data, everything, account, all my readings, all readings, my readings, my records, all records, records, my record, history, profile, information, info, personal data, all of it
        details, my details, all my messages, my messages, my numbers, all my numbers, file, my file, everything about me, all about me, my log, my logs, logs, my history, all my entries, my entries, it all, my account, all traces, every trace, my name
        """,
    "erase_word": "erase, erasing",
    "erase_said": """
        take all my {info|data|details|stuff|information} off, gdpr {delete|deletion|erasure|erase}( request), {data|gdpr} {deletion|erasure} request, erase me, delete me, forget me, forget {all|everything} about me, forget about me, wipe me, remove me, erase all, delete all, wipe all, clear all, erase everything, right to be forgotten, clear everything, remove everything, start from scratch delete all
        """,
    "forever": "his, her, their, mum's, mom's, mama's, dad's, gran's, nan's, wife's, husband's, mother's, father's, forever, for good, permanently, completely, for ever, entirely, totally, you have, about, on me, off, from your {system|server|servers|database|records|files}, system, all, every bit of",
    # taking back
    "take_back": """
        ignore, disregard, forget, remove, delete, cancel, undo, scrap, scratch, erase, drop, discard, strike, take back, take out, take off, throw out, throw away, withdraw, retract, bin, don't count, do not count, dinnae count, comot, rub, unsend, recall, skip over, pay no attention to, don't mind, do not mind, dont mind
        never mind, nevermind, nvm, pls ignore, rub out, get rid of, kindly ignore, don't log, do not log, don't record, don't save, reverse, revert, wipe, clear, trash
        """,
    "just_said": """
        that, it, this, last, last one, previous, prior, message, msg, text, txt, reading, entry, one, post, number, meal, log, latest, above, value, result, what i {just sent|said|sent|wrote|typed|just said|just wrote|just typed|told you|just told you|put}, i {just sent|sent|wrote|just wrote|just typed}, wetin i {send|sent|talk}, yin, that yin, that wan, mine, before, most recent, the one before, walk, food
        just now, thing
        """,
    "wrong_sent": """
        wrong {chat|person|button|phone|message|window|group|thread|contact|recipient}, by mistake, by accident, sent in error, wasn't me, was not me, not mine, isn't mine, wasn't mine, not for you, was for {my|the} {wife|husband|daughter|son|sister|brother|mum|mom|friend}, meant for {someone else|somebody else|my wife|my husband|my daughter|my sister|my friend}
        my {kid|son|daughter|toddler|grandson|granddaughter|cat} {sent|typed|pressed} {it|that|this}, pocket text, butt dial
        """,
    "slip": """
        wrong {chat|person|button|number|phone|message|window|group|thread|key|one|place|text|contact|recipient|bot|time|day}, by mistake, mistake, my mistake, a mistake, by accident, accident, accidental, accidentally, oops, sorry, my bad, sent in error, error, in error, wasn't me, was not me, not mine, isn't mine, not me, not for you, meant for {someone else|my wife|my husband|my daughter|somebody else|my sister|my friend|another chat}, butt dial, pocket text, kid, my kid sent it
        pressed send, typo, wrong, sent too {soon|early}, sent by mistake, didn't mean {that|to send|it|to send that}, did not mean to send, not meant for you, was a test, was wrong, was an accident, fat fingers, autocorrect, kids playing, ooops, whoops
        """,
    # settings
    "moved_to": "instead, on {monday|tuesday|wednesday|thursday|friday|saturday|sunday}, monday, tuesday, wednesday, thursday, friday, saturday, sunday, mondays, fridays, saturdays, sundays",
    "clock": "am, pm, o'clock, oclock",
    "change": """
        change, changing, switch, swap, set, adjust, alter, update, move, edit, modify, shift, make, use, different, correct, fix, put, reset, new, instead, push back, bring forward, show, should be, need, want, is, are, has, have, my, prefer, turn on, turn off
        """,
    "changing": """
        change, changing, switch, swap, set, adjust, alter, update, move, edit, modify, shift, reset, push back, bring forward, want to change, instead
        """,
    "setting": """
        settings, setting, preferences, unit, units, main meal, main meal time, meal time, meal times, mealtime, dinner time, lunch time, breakfast time, supper time, dinner, lunch, breakfast, supper, time, times, clock, time zone, timezone, language
        reminder time, reminder times, quiet hours, quiet time, digest, digest day, summary day, testing days, test days, schedule, hours, my goals, goals, targets, my targets, emergency number, profile, options, name, phone number, number, reminders, week, day, discreet mode, privacy
        """,
    "settings_said": """
        settings, setting, preferences, discreet, discreet mode, private mode, quiet hours, quiet time, ramadan, fasting for ramadan, ramadan starts, shared phone, my phone is shared, phone is shared, i share my phone, i share this phone
        {i'm|i am|im} fasting for ramadan, {i fast|i will fast|i'll fast|fasting} {for|during|in} ramadan( {from tomorrow|from today|from next week|this month|starting tomorrow}), observing ramadan, time zone, timezone, time zones, language, languages, different time zone, change my {settings|unit|units}
        privacy mode, privacy settings, sharing a phone, share a phone, someone else uses my phone, other people see my phone, other people use this phone, clocks changed, ramadhan
        """,
    "secret": "hide, hiding, private, discreet, discrete, secret, hidden, conceal, not show, privacy, privately, covered",
    "unit_name": "mmol, mmols, mmol/l, mg/dl, mg / dl, mgdl, mg, millimoles, milligrams, mmol l, mmol / l",
    "meter": "meter, glucometer, machine, device, monitor, units, unit, new meter, shows, reads, gives, measures, uses, display, displays, comes, mine, in, now, american, european, british, my new, got a, changed my",
    "tongue": """
        spanish, english, espanol, ingles, castellano
        """,
    "speak": """
        speak, talk, write, in, language, switch, change, use, prefer, reply, answer, text, message, to, do you speak, speaks, speaking, instead, set, can you, understand, only, better, know
        """,
    "nights_said": """
        nights, night shift, night shifts, nightshift, nightshifts, night work, working nights, work nights, on nights, night duty, graveyard shift, graveyard shifts, back on days, on days, day shift, day shifts, days this week, late shift, late shifts, early shift, early shifts, shift work, shifts, overnight shift, overnight shifts, graveyards
        """,
    "shift": """
        this week, next week, week, weeks, month, tonight, now, from, until, till, monday, tuesday, wednesday, thursday, friday, saturday, sunday, tomorrow, working, work, doing, doing the, job, at work, back, again, for, starting, start, last, coming, few, next, switched, moved, changed, change, put, rota, days, day, shift
        """,
    "hours": """
        earlier, before, after, different time, different times, between, am, pm, o'clock, oclock, in the morning, in the evening, at night, in the day, later in the day, earlier in the day, at different times, past, noon, midnight, morning, evening, night, mornings, evenings, during, while i sleep, sleeping, asleep, from, until, till, to, when i sleep
        """,
    "number": "half, quarter, one, two",
    # later
    "later_said": """
        later, 1 {minute|min|sec|second|moment|mo|tick}, ltr, laters, latr, not yet, in a bit, in a while, in a little while, in a minute, in a moment, in a sec, in a mo, in a jiffy, in a tick, soon, snooze, wait, one moment, a moment, one sec, a sec, a second, a minute, a mo, one minute, hang on, hold on, hold up, hold your horses, bear with me, give me a {minute|sec|second|moment|mo|bit|tick}, give me a few( {minutes|mins}), few more minutes, a few minutes, couple of minutes, couple more minutes, few minutes, need more time, more time
        bit later, a bit later, maybe later, little later, a little later, later on, remind me, shortly, will do later, not right this {second|minute|moment}, one tick, two ticks, 2 ticks, this evening, jiffy, just a min, a min, one min, back soon, brb, in a few, in a bit mate, small small time, small time, wait small, when i can, when i get a chance, soonish, need a few minutes, need a minute, need a moment, not ready, not ready yet, still eating
        """,
    "kept": """
        busy, busy now, busy right now, in a meeting, driving, driving now, at work, on the bus, on the train, in the car, in traffic, in the middle of something, on a call, on the phone, in class, at church, out and about, at the shop, at the shops
        """,
    "not_now": "not now, not right now, can't right now, can't now, cannot right now",
    "when_free": """
        when {i|we} {get|am|are|come|have|finish|can|arrive|reach|wake}, once {i|we} {get|am|are|come|have|finish|arrive}, as soon as {i|we} {get|am|can|come|have}, at home, not home yet, not home, home in, not at home
        i'm not home yet, on my way home, on the way home, my meter is upstairs, when free, not there yet
        """,
    "when_then": """
        after {work|the meeting|church|school|lunch|dinner|class|this|my meeting|my shift|breakfast|my shower|prayers|mass|this call|the call}
        tonight, this evening, this afternoon, tomorrow, before bed, after eating, after my walk
        """,
    "ask_me": """
        ask, ask me, remind, remind me, text me, message me, ping me, try me, try, nudge me, check with me, check back, come back, prompt me, get back to me, poke me, tell me, buzz me, will test, i'll test, will do it, do it, do that, test, testing, check, will check, i'll do it, i'll check, i'll do that, will measure, measure, doing it, busy, driving, send, home, back, done, there, meeting, meeting now, work, sort it, do my test, get to it, prick my finger, take it, have it
        """,
    "linger": "give me, need, wait, another, more, about, around, like, in, within, say, hold on, hang on, snooze, after, extra, maybe, just, another few, in about, in another, in roughly, for, for another",
    "minutes": "min, mins, minute, minutes, minuts, hour, hours, hr, hrs, h, m, an hour, half an hour, half hour, half, quarter of an hour, sec, secs, seconds, couple, ten, five",
    # small talk
    "kind": """
        sorry (for |about ){late|slow|delayed} {reply|replies|response|answer}, {thanks|thank you|thx|cheers} for {the|your|all your|all the|all} help, sorry for the {late|slow} reply, sorry for the delay
        {thanks|cheers|ta|thank you} {heaps|loads|tons|millions|v much|vm|ever so}, heaps of thanks, tku, tq, tqvm, thnx v much, thanq, thank yu, thanku so much
        asante, asante sana, terima kasih, makasih, xie xie, xiexie, arigato, arigatou, obrigado, obrigada, mahalo, danke, dziekuje, spasibo, dhanyavad, shukriya, meherbani, tashakor, teshekkur, tesekkur, grazie, grazie mille, dankie, baie dankie, ngiyabonga, enkosi, medaase, daalu, ese, nagode, webale, murakoze, kiitos, tack, takk, tak, efharisto, kamsahamnida, gamsahamnida, do jeh, mh goi, khop khun, cam on, nandri, malo, vinaka, mauruuru, diolch, go raibh maith agat
        maraming salamat, maraming salamat po, merci beaucoup, merci bien, hvala, hvala lijepa, efcharisto, ta very much, thanks, thanks a mill, thanks a million, thank you, thankyou, thank u, thanku, thx, tnx, thnx, thanx, thks, ty, tysm, ta, cheers, much appreciated, appreciated, appreciate, appreciate it, appreciate you, grateful, i'm grateful, much obliged, obliged, bless, bless you, god bless, god bless you, god is good, gracias, merci, asante, salamat, shukran, dhanyavaad, medaase, e se, daalu, good job, great job, well done, good bot, nice one, nice work, love it, love this, love you
        {you're|u r|ur|you r|u are} the {best|greatest|goat}, you're {welcome|great|awesome|kind|the best|amazing|wonderful|a star|a gem|an angel|so kind|very kind|a lifesaver|so helpful|very helpful|helpful|sweet|so sweet|brilliant}, you are {welcome|great|awesome|kind|the best|amazing|wonderful|a star|a gem|an angel|so kind|very kind|a lifesaver|so helpful|very helpful|helpful|sweet|so sweet|brilliant}, so kind, very kind, how kind, patient, you are {very |so |}{patient|thoughtful|nice|good to me}, you're {very |so |}{patient|thoughtful|nice|good to me}, remembering me, for remembering me, helpful, very helpful, so helpful, that's kind, thats kind, useful, very useful, good to know, makes sense, sense, understood, noted, will do, got it, gotcha, i see, i understand, roger, copy that, point taken, fair enough
        """,
    "hail": """
        walk good, kia ora, hi, hello, hey, heya, hiya, howdy, yo, good morning, morning, mornin, good afternoon, good evening, evening, good night, goodnight, gn, gm, night, night night, nighty night, night nite, {happy|merry|blessed} {valentine's day|valentines day|valentines|mother's day|mothers day|father's day|fathers day|women's day|easter|diwali|eid|eid mubarak|holi|thanksgiving|sunday|monday|tuesday|wednesday|thursday|friday|saturday|weekend|holidays|holiday|independence day|hanukkah|vesak|lunar new year|onam|pongal|vaisakhi|navratri|ramadan|st patrick's day|halloween|anniversary|sabbath}, good night and, good day, g'day, greetings, salaam, salam, namaste, sup, what's up, whats up, wassup, wagwan, wah gwaan, how far, how are you, how are you doing, how are u, how r u, how is it going, how's it going, hows it going, {how's|hows} {you|things|life|everything|tricks}, how are things, how are we, how do you do, how's your day, hows your day, nice to meet you, pleased to meet you, bye, bye bye, goodbye, see you, see ya, see you later, see you soon, see you tomorrow, cya, later gator, talk later, talk soon, talk to you later, talk to you tomorrow, talk tomorrow, ttyl, take care, sleep well, sweet dreams, have a {good|nice|great|lovely|blessed|wonderful|pleasant} {day|evening|night|weekend|week|one|morning|afternoon|time}, happy {birthday|new year|christmas|easter|holidays|thanksgiving|diwali|eid|friday|weekend|mother's day|father's day}, merry christmas, merry xmas, eid mubarak, ramadan kareem, welcome, welcome back, assalamu alaikum, asalaam alaikum, kumusta, ola, blessings, good to see you, long time no see
        """,
    "pleased": """
        choice, sweet as, chur, ta muchly, wicked, sound, grand, deadly, lovely jubbly, sharp sharp, lekker, righto, righty ho, hugs, you rock, clever bot, smart bot, good bot, speak soon, talk soon, top man, good man, sorted, aces, ok, okay, k, kk, okey, okie, okie dokie, okey dokey, alright, all right, alrighty, right then, sure, sure thing, of course, yes, yeah, yep, yup, ya, aye, yes please, great, cool, nice, good, fine, perfect, awesome, wonderful, excellent, fantastic, brilliant, lovely, amazing, super, superb, sweet, wow, yay, woohoo, whoo, hooray, hurray, haha, hahaha, hehe, lol, lmao, lolz, rofl, great news, good news, sounds {good|great|fine|like a plan}, not a bother, not a bother on me, no bother at all, no worries, no problem, no probs, np, not to worry, no bother, all good, all well, all is well, all fine, it's fine, its fine, it's ok, its ok, that's {good|great|lovely|wonderful|brilliant} news, that's {good|great|fine|ok|okay|nice|right|cool|lovely|wonderful|awesome|all|interesting}, thats {good|great|fine|ok|okay|nice|right|cool|lovely|wonderful|awesome|all|interesting}, i'm {ok|okay|fine|good|well|great|alright|all right|doing well|doing fine|doing good|doing great|doing ok|happy}, i am {ok|okay|fine|good|well|great|alright|all right|doing well|doing fine|doing good|doing great|doing ok|happy}, im {ok|okay|fine|good|well|great|alright|all right|doing well|doing fine|doing good|doing great|doing ok|happy}, feeling {fine|good|great|well|ok|okay|better|wonderful|amazing|fantastic}, feel {fine|good|great|well|ok|okay|better|wonderful|amazing|fantastic}, doing {well|fine|good|great|ok}, i'm so happy, so happy, so proud, phew, interesting, congrats, congratulations, hmm, ah, aha, oh, amen, insha'allah, inshallah, mashallah, alhamdulillah, praise god, hallelujah
        """,
    "small": """
        for the reminder, for reminding me, for checking, for asking, big up, po, ji, baby, coach, boss, teacher, sa, sa reminders, reminders, your reminders, for the reminders, sa tulong, pet, hen, duck, petal, sweetheart, hun, hon, luv, my dear, pal, chief, auntie, uncle, miss, mister, ate, kuya, lah, darling, dearie, dearest, lovely, mum, mama, brother, sister, and you, so much, very much, a lot, lots, a million, a bunch, a ton, again, kindly, for, the, your, help, for helping, for reminding me, for the reminder, for the tip, for the tips, for the advice, for the info, for checking, for checking in, for asking, for letting me know, for that, for this, for everything, for being there, for all your help, for caring, bot, dear, friend, my friend, doctor, doc, nurse, mate, pal, buddy, love, sir, ma'am, madam, boss, bro, sis, everyone, all, team, guys, there, to you, to you too, you too, same to you, and, so, that, it, is, was, this, very, really, too, just, now, then, today, me, my, i, i'm, you, u, to, of, sorry, sorry for the late reply, sorry for the delay, late reply, much, here, with, good, xx, x, xxx, ones, day, a, an, tomorrow, well, oh, that's, in, will, do, hear, as, always, am, feel, at, one
        """,
}

INTENTS: Final[Mapping[str, Block]] = {
    concept: Block(block) for concept, block in _BLOCKS.items()
}
