"""Names of makers that people type for the thing itself (`a coke`, `a bowl of weetabix`).

The lists of foods hold generic words only. These stand apart: they are read, so that what was eaten
is entered, and counted as the kind that the thing is; no sentence of the bot says them. From
memory, and nowhere near complete.
"""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind
from bot.parser.vocabulary import phrases

FOODS_BY_MAKER: Final[Mapping[FoodKind, tuple[str, ...]]] = {
    FoodKind.SWEET_DRINK: phrases(
        """
        coke(s), coca cola, coca-cola, cocacola, pepsi, fanta(s), sprite, 7-up, dr pepper, mountain dew, mtn dew, root beer float, irn bru, irn-bru, lucozade, ribena, vimto, gatorade, powerade, red bull, monster energy, capri sun, kool-aid, kool aid, snapple
        milo, bournvita, ovaltine, horlicks, nesquik, malta guinness, maltina, supermalt, thums up, limca, mirinda, frooti, maaza, rooh afza, rooafza, inca kola, postobon, jarritos, jarrito, manzana postobon, coquita, frappuccino, yakult, sunny d, complan
        una coca, coquita, coca, cocas, bigcola, big cola
        """
    ),
    FoodKind.FREE_DRINK: phrases(
        """
        diet coke(s), coke zero, diet pepsi, pepsi max, pepsi zero, coke light, coca cola light, coca light, coca zero, diet sprite, sprite zero, fanta zero, diet dr pepper, zero coke, diet 7up, 7up free
        """
    ),
    FoodKind.STARCH: phrases(
        """
        weetabix, weet-bix, weet bix, weetbix, weetbicks, cheerios, corn flakes, special k, rice krispies, cocoa pops, coco pops, froot loops, frosties, frosted flakes, shreddies, shredded wheat, bran flakes, all-bran, all bran, ready brek, alpen, quaker oats, cream of wheat, golden morn, cerelac
        indomie, maggi noodles, maggi, maruchan, top ramen, lucky me, pancit canton, pot noodle, cup noodle, mi goreng, indomee, doritos, pringles, takis, cheetos, fritos, ryvita, ritz crackers, bimbo, wonder bread, hobnobs, tim tams, digestives
        """
    ),
    FoodKind.SWEET_FOOD: phrases(
        """
        nutella, oreo(s), kitkat(s), kit kat(s), snickers bar, mars bar(s), twix, bounty bar, m&ms, m & ms, skittles, haribo, maltesers, cadbury, dairy milk, hershey(s), reeses, kinder bueno, ferrero rocher, toblerone, jaffa cake(s), pop tart(s), krispy kreme(s), krispy kreme donut, twinkie(s), ben and jerrys, haagen dazs, magnum ice cream, popsicle(s), jello, jell-o, nature valley bar, nutri-grain bar
        """
    ),
    FoodKind.MIXED_DISH: phrases(
        """
        big mac(s), big mac meal, whopper(s), mcdonalds, mcdonald's, mcnuggets, mcchicken, quarter pounder(s), happy meal, mcmuffin(s), egg mcmuffin, kfc, subway sandwich, chipotle bowl, taco bell, dominos, domino's pizza, pizza hut, nandos, nando's, greggs, popeyes, chick-fil-a, jollibee, chickenjoy, burger king, wendys, panda express, cup a soup, kraft dinner, kraft mac and cheese, hot pocket(s), lean cuisine
        """
    ),
    FoodKind.PROTEIN: phrases("spam, quorn, slim jim, babybel, baked beans heinz, heinz beans"),
    FoodKind.FAT: phrases("marmite, vegemite, best foods mayo, kewpie"),
}
