"""Things that have numbers which are no glucose: what is numbered, what is paid with, what is
counted. A number beside one of these words is asked about, never taken for a reading."""

from typing import Final

from bot.parser.vocabulary import phrases

#: The number stands behind these (`shoe size 42`, `channel 7`).
NUMBERED: Final = phrases(
    """
    {shoe|dress|shirt|hat|waist|ring|trouser|clothes|neck|collar} size, size, sizes, {gas|water|phone|light|electric|electricity|power|internet|hospital|restaurant|bar|shopping|grocery} bill
    bill, bills, fare, bus fare, taxi fare, taxi, cab, toll, tip, fee, fees, school fees, rent, salary, wages, pension, loan, deposit, budget, discount, tax, balance, airtime, credit, recharge, token, tokens
    bingo, bingo number, lotto, lottery, lottery number, raffle, raffle ticket, jackpot, draw, jersey, jersey number, shirt number, squad number, lucky number, serial number, serial, model, model number, part number, account, account number, acct, reference, ref
    reference number, order, order number, tracking, tracking number, parcel, invoice, invoice number, receipt, receipt number, booking, booking number, confirmation, confirmation number, membership, member number, policy, policy number, passport, licence, license, number plate, plate number, registration, reg, id, id number, user, student number, employee number, badge
    case, case number, file number, claim, prescription number, rx, lot, lot number, batch, code, codes, pass code, passcode, password, pin, pin code, otp, area code, post code, postcode, zip, zip code, dial code, wifi, wi fi, combination, key, locker, safe
    table, table number, table no, seat, row, gate, bay, desk, ward, cubicle, radio, radio on, fm, am radio, frequency, station, channel, tv, volume, level up, score, the score, final score, half time, full time, ft, ht, points, rank, ranking, position, ranked, rated, rating, grade, gas mark, full marks, exam, quiz, iq, test score, vote, votes, likes, followers, subscribers, views
    page, chapter, verse, hymn, hymn number, psalm, psalms, surah, book, volume number, issue, episode, season, part number, lesson, question, exercise number, problem, step number, section, paragraph, article, article number, figure number, table number, map, track
    room, ward, bed number, floor, flat, apartment, apt, unit number, suite, office number, building, block number, house, house number, door, door number, gate, gate number, exit, platform, terminal, bay, berth, dock, loading dock, pier, quay, hangar, warehouse, checkout, paddock, plot, allotment plot, stall, slot, deck, carriage, coach, pitch, court, hole, track, seat, seat number, row, stand, aisle, cabin, counter, queue, queue number, ticket, ticket number, window, lane, lane number, pump
    bus, guagua, colectivo, combi, kombi, pmv, pmv bus, trotro, tro tro, chapa, bajaj, minibus, bus number, number bus, tram, train, train number, line, line number, route, road number, highway, hwy, interstate, motorway, freeway, junction, jct, stop, bus stop, mile marker, mile post, kilometer post, flight, flight number, flight is ba, flt, car, car number, taxi number, matatu, jeepney, okada, boda, danfo, tricycle
    speed, speed limit, mileage, odometer, oven, oven at, thermostat, heater, ac, aircon, air con, weather, humidity, altitude, earthquake, wind speed, winds, temperature outside, water temp, dial, dialled, extension, ext, hotline, emergency number, ussd, whatsapp, sms, shortcode, short code
    stock, shares, share price, exchange rate, dollar rate, interest rate, interest, index, dow, petrol, gasoline, gas, diesel, fuel, litre of, price, prices, price of, costs, cost, charge, charged, worth, paid, spent, sold for, bought for, owe, owes, borrowed, lent, sale, offer, on offer, total, subtotal, sum, amount due, due
    year, since, born, born in, class of, vintage, circa, back in, windows, version, ver, release, iphone, galaxy, playstation, area 51, century, generation, gen, battery at, battery is, battery, phone at, charge at, population, capacity, odds, bet, bets
    po box, p o box, box, zone, district, sector, precinct, street, avenue, street number, highway exit, apartment number, unit no, plot, stall, stall number, shop number, camp, division, group number, team number, draft, pick
    preheat(ed)( the oven)( to), gas mark, fridge, freezer, otp, access code, promo code, discount code, sort code, doing about, going at, drove at, clocked, dob, date of birth, birth year, year of birth
    rent is, the rent is, bill is, code is, fare is, shoes size, bra size, hymn no, apt no
    """
)

#: Money, behind the number (`120 shillings`).
MONEY: Final = phrases(
    """
    dollar(s), buck(s), euro(s), pounds sterling, peso(s), rupee(s), rupiah, rupya, naira, cent(s), shilling(s), bob, quid, fiver, tenner, sole(s), real, reais, rand(s), pence, pennies, p each, penny
    cedi(s), pesewa(s), dirham(s), dinar(s), riyal(s), rial(s), ringgit, baht, yen, yuan, rmb, won, krona, kroner, kronor, krone, franc(s), lira, zloty, forint, rouble(s), ruble(s), taka, birr, kwacha, dalasi, leone(s), lempira(s), quetzal(es), colon(es), guarani(es), bolivar(es), boliviano(s), cordoba(s), balboa(s), lucas, varos, plata, centavo(s), lakh, crore, nairas, cedis, pula, metical
    """
)

#: Short names of money, behind the number or before it.
CURRENCIES: Final = phrases(
    """
    us dollars, usd, eur, gbp, cad, aud, nzd, inr, pkr, bdt, lkr, npr, ngn, ghs, gh, kes, ksh, kshs, ugx, ush, tzs, tsh, zar, zmw, mwk, rwf, xof, xaf, cfa, fcfa, etb, egp, aed, sar, qar, kwd, omr, php, idr, myr, sgd, thb, vnd, hkd, cny, jpy, krw, mxn, cop, ars, clp, brl, uyu, gtq, hnl, dop, jmd, ttd, bbd, bsd, xcd, gyd, rs, ils, chf, sek, nok, dkk, pln, huf, czk, rub, uah
    r, rm, us
    """
)

#: What is counted and no food, behind the number (`102 points`).
COUNTED: Final = phrases(
    """
    pokes, pricks, jabs, stabs, goes, attempts, tries, people, persons, kids, children, times, time, days, day, weeks, week, months, month, guests, friends, grandkids, cats, dogs, percent, %, degrees, bus, tram, train, trains, buses, flight, points, goals, tests, texts, messages, calls
    seconds, sec, secs, st, nd, rd, th, of us, street, avenue, ave, road, lane, drive, floor, likes, photos, emails, games, cigarettes, cigarette, beats, chairs, cars, books, pages, episodes, nights, more days, boulevard, blvd, grandchildren
    more, channels, stops, watts, watt, volts, volt, amps, feet, ft, inches, sheep, goats, cows, chickens in the yard, minutes left, tickets, mph, kph, kmh, km / h, miles an hour, miles per hour, passengers, students, patients, men, women, boys, girls
    fm, am radio, mhz, khz, hz, hertz, gb, mb, tb, megabytes, gigs, gigabytes, mbps, pixels, ppm, decibels, db, horsepower, hp, cc, psi, rpm, knots, acres, hectares, square feet, square metres, sq ft, sqm, votes, followers, subscribers, views, runs, wickets, overs, rounds won, marks, questions, seats, houses, rooms, flats, workers, staff, members, cousins, voters, teams, players, pupils, houses down
    t-shirt, t shirt, tshirt, shirt, shoes, jeans, dress, trousers, bra, bags, boxes of books, bricks, bags of cement, plants, trees, flowers, birds, fish in the tank, pigeons, bees, stitches, beads, candles, cards, stamps, coins, songs, films, movies, jokes, kisses, hugs, blessings, prayers, decades, centuries, generations
    years ago, years back, weeks ago, weeks in, days left, days to go, weeks to go, sleeps
    """
)
