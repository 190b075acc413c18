"""What a number counts, prices, names or ranks when it is no glucose: words before it and behind it.

`PRICED` and `NUMBERED` stand before the number (`KES 200`, `shoe size 42`), `PRICED_BEHIND` and
`COUNTED` behind it (`24 el litro`, `142 followers`). The codes of currencies are those of ISO 4217.
"""

from typing import Final

from bot.parser.vocabulary import phrases

#: Codes and short names of money, before the number or behind it.
CURRENCIES: Final = phrases(
    """
    aed, afn, amd, ars, aud, azn, bdt, bgn, bhd, bob, brl, bwp, cad, cdf, chf, clp, cny, cop, crc
    czk, dkk, dop, dzd, egp, etb, eur, fjd, gbp, gel, ghs, gmd, gtq, hkd, hnl, huf, idr, inr, iqd
    irr, isk, jmd, jod, jpy, kes, kgs, khr, krw, kwd, kzt, lak, lbp, lkr, mad, mmk, mur, mvr, mwk
    mxn, myr, mzn, nad, ngn, nio, nok, npr, nzd, omr, pen, pgk, php, pkr, pln, pyg, qar, ron, rsd
    rub, rwf, sar, sdg, sek, sgd, sll, syp, szl, thb, tnd, ttd, twd, tzs, uah, ugx, usd, uyu, uzs
    vnd, xaf, xof, yer, zar, zmw, zwl, rs, rs., ksh, kshs, ush, tsh, tk, ngn, ghc, rm, rp, r$, us$
    a$, c$, nz$, fcfa, cfa, dhs, dh, tl, kr, zl, mxn, bs f
    """
)
_NAMES: Final = """
    dollar(s), buck(s), euro(s), pound(s) sterling, peso(s), rupee(s), naira, kobo, cent(s)
    shilling(s), bob, quid, fiver, tenner, pence, sol(es), reais, real, rand(s), cedi(s), pesewa(s)
    dirham(s), dinar(s), riyal(s), rial(s), lira(s), yen, yuan, won, baht, ringgit, rupiah, dong
    kwacha, pula, birr, franc(s), krona, kroner, kronor, zloty, forint, rouble(s), ruble(s), taka
    lei, lev, shekel(s), guarani(es), lempira(s), quetzal(es), balboa(s), bolivar(es), colones
    kyat, riel, kip, tenge, hryvnia, lari, dram, gourde(s), kwanza, metical, meticais, ariary
    leone(s), dalasi, ouguiya, grand
    """
#: Money named in full, and what makes a price of the number before it (`24 el litro`).
PRICED_BEHIND: Final = phrases(
    _NAMES
    + """
    each, apiece, a piece, a kilo, a kg, a pound each, a litre, a liter, a bottle, a bag, a dozen
    a head, a ticket, a night, a month, a week, a year, a pop, per kilo, per kg, per litre, per liter
    per person, per head, per night, per month, per week, per year, per bag, per dozen, per box
    per pound, per hour, per unit, a bunch, per bunch, off, percent off, % off, change
    el kilo, el litro, la libra, la docena, cada uno, cada una, por kilo, por litro, la bolsa
    el paquete, por persona, al mes, la unidad, al kilo, la caja, la botella
    """
)

#: What has a number of its own.
NUMBERED: Final = phrases(
    """
    {shoe|shoes|dress|bra|waist|trouser|trousers|jeans|shirt|ring|collar|clothes|clothing|hat|glove
      coat|boot|boots|my} size, size, sized, sizes, talla
    {gas|water|power|electric|electricity|light|phone|internet|hospital|doctor|vet|dentist|grocery
      shopping|restaurant|medical|heating|council tax} bill
    bill, bills, fare, fares, toll, tax, fee, fees, price, prices, pricing, tip, deposit, salary
    wages, wage, bonus, payment, refund, discount, budget, loan, debt, savings, balance, account
    sort code, cheque, check number, card, card ending, receipt, voucher, coupon
    {taxi|uber|bus|cab|train|petrol|gas|fuel|diesel|groceries|shopping|ticket|tickets|parking
      haircut|repair|repairs|school fees|airtime|data bundle|matatu|boda|tuktuk|okada} {was|is|cost
      came to|for}
    bingo, bingo number, lotto, lottery, raffle, lucky number(s), winning number, jackpot
    number plate, plate number, licence plate, license plate, registration, reg
    serial, serial number, model, model number, part number, batch, lot number, item number
    reference, ref, ref no, case number, claim number, policy, policy number, member number
    membership number, patient number, hospital number, nhs number, bay, bed number, cubicle
    tracking, tracking number, parcel number, order number, order no, order, invoice number
    booking, booking number, booking ref, confirmation, queue number, token, token number
    table number, table no, counter number, booth, shop number, plot, plot number, block number, villa
    house no, apartment number, flat number, flat no, room number, room no, floor, locker number
    row, seat number, seat no, coach, carriage, cabin number, berth, gate number, terminal, pier, platform
    bus number, bus no, train number, tram number, flight number, junction, jct, mile marker, km marker
    motorway, turnpike, county road, state road, national road, zone, district, sector, postcode
    ch, radio, am radio, fm, frequency, episode, ep, season, volume, vol, pages, pg, psalms
    hymn, hymn number, sura, surah, ayah, paragraph, article, clause, question number, exercise number
    day, week, month, top, stage, phase, pain, pain level, pain is, rated, rating, rate it, score it
    year, lesson, grade, class of, rank, ranked, ranking, world number, jersey, shirt number, bib
    bib number, player number, lap number, high score, target score, iq, gpa, exam, wordle
    sudoku, crossword, steps goal
    otp, access code, security code, passcode, pass code, password, pin number, pin code
    verification code, unlock code, promo code, discount code, wifi, wifi password, wi fi, username
    phone number, mobile number, hotline, id number, user id, passport, employee number
    student number, badge, badge number
    oven, oven at, oven to, oven is, oven on, oven temp, preheat(ed)( the oven)( to), gas mark, fridge
    freezer, thermostat, heater, aircon, air con, temperature outside, humidity, rain chance
    battery, battery at, battery is, charged to, phone at, phone is at, brightness, volume at
    speed, speed limit, going at, drove at, doing about, cruise control, odometer, mileage, clocked
    altitude, elevation, wind, windspeed, pressure cooker
    born, born in, born on, year of birth, dob, date of birth, birth year, established, founded in
    back in, circa, vintage
    {made|sold|raised|donated|counted|bought|collected|received|got paid|earned|earn|saved|owed|owe
      owes|lent|borrowed|paid|pays|charging|charged|refunded|tipped|invested|withdrew
      deposited|transferred} (only|just|about|around|almost|nearly|over|a total of|me|him|her|them)
    {likes|views|subscribers|followers|members|voters|votes|seats|attendance|population} {at|is|are}
    """
)

#: What is counted, and no food.
COUNTED: Final = phrases(
    """
    followers, views, subscribers, votes, voters, members, seats, tickets, copies, episodes, chapters
    pages, verses, words, lines, songs, tracks, pictures, videos, mails, contacts, unread
    notifications, players, teams, runs, wickets, tries, sets, matches, points, pts, stars, medals, wins
    losses, stitches, claps, hits, vehicles, lorries, motorbikes, wheels, bedrooms, rooms, doors
    windows, bricks, nails, screws, tiles, acres, hectares, trees, seedlings, flowers, roses
    balloons, candles, gifts, letters, parcels, bales, horses, pigs, puppies, kittens, bees, hives
    visitors, customers, clients, workers, soldiers, pupils, babies, twins, cousins, relatives, pax
    kwh, kw, hp, cc, rpm, psi, hertz, hz, khz, mhz, ghz, fm, mb, gb, tb, kb, mbps, megabytes, gigabytes
    pixels, px, dpi, decibels, db, kph, km / h, kmph, knots, miles an hour, miles per hour
    km an hour, km per hour, kms per hour, amps, per cent, celsius, fahrenheit, centigrade, sqft
    sq ft, sqm, square {feet|metres|meters|miles}, decades, generations, attempts, spins
    missed calls, weeks pregnant, months old, weeks old, days old, a side
    """
)
