"""Where people eat, on what occasions, and in what food is kept. Written for this project."""

from typing import Final

from bot.parser.vocabulary import phrases

EATING_PLACES: Final = phrases(
    """
    restaurant, resto, cafe, caff, coffee shop, canteen, cafeteria, diner, pub, bar, bistro, bakery
    deli, takeaway, take away, takeout, chippy, chip shop, kebab shop, corner shop, shop, store
    supermarket, market, stall, stand, cart, van, food truck, truck, food court, mall, hawker centre
    hawker center, hawker, kopitiam, warung, mamak, dhaba, mess, mess hall, hostel, hotel, buffet
    drive thru, drive through, counter, kiosk, street, roadside, tuck shop, spaza, shebeen, bukka
    buka, mama put, chop bar, maquis, shisha place, tea house, teahouse, teashop, tea shop, izakaya
    cantina, fonda, comedor, taqueria, soda, mercado, puesto, restaurante, panaderia, tienda
    house, place, home, flat, table, desk, kitchen, office, work, school, college, uni, university
    class, hospital, ward, clinic, care home, home, nursing home, church, chapel, mosque, temple
    gurdwara, synagogue, langar, community centre, community center, day centre, senior center
    marae, longhouse, village, farm, camp, beach, park, airport, station, bus stop, gas station
    petrol station, services, rest stop, train, plane, bus, car, cinema, stadium, match, game
    cab, lorry, tractor, taxi, boat, tent, shed, barn, field, fields, break room, breakroom, staff room, sofa, couch
    balcony, porch, veranda, patio, dining room, living room, lounge, cabin, trailer, caravan, workshop, bench
    caterers, vendor, site, factory, depot, yard, garage, hall
    feria, metro, puerto, terminal, carretera
    casa, oficina, trabajo, escuela, iglesia, playa, parque, calle, esquina
    """
)

OCCASIONS: Final = phrases(
    """
    party, wedding, birthday, birthday party, funeral, wake, potluck, picnic, bbq, barbecue, braai
    cookout, fete, fair, festival, carnival, feast, reception, shower, baby shower, christening
    baptism, graduation, reunion, get together, gathering, do, meeting, conference, event, ceremony
    iftar, seder, thanksgiving, christmas, xmas, easter, eid, diwali, hangi, luau, crab boil
    fish fry, fiesta, boda, cumpleanos, asado, reunion familiar, bautizo
    """
)

KEPT_IN: Final = phrases(
    """
    fridge, freezer, tin, can, packet, box, bag, tub, jar, wall, oven, microwave, pan, pot
    vending machine, machine, lunchbox, lunch box, garden, nevera, heladera, refri, lata
    """
)
