"""Sugar as it is taken against a low reading: eaten, though its names are those of a reading
(`glucose`) or of a drug (`tablets`)."""

from typing import Final

from bot.parser.vocabulary import Block, phrases

#: Foods wherever they stand.
SUGAR: Final = Block(
    """
    {glucose|dextrose|dextro|gluco} {tablet|tab|sweet|candy|gel|powder|shot|chew|lozenge|cube|drop
      pouch|sachet|bar|jelly|syrup|pastille|bit|tabs}(s), {glucose|dextrose} candies, glucose lucozade
    {sugar|glucose sugar} {gel|powder|sachet|packet|cube|lump|sweet|syrup|candy|jelly|granule}(s)
    glucotab(s), glucogel, dextrotab(s), fast acting sugar, fast sugar
    {tab|tablet|sachet|packet|pack|pouch|tube|spoon|spoonful|teaspoon|tablespoon|tsp|tbsp|scoop|lump
      cube|piece|sweet|pellet|bit|handful|gram|g}(s) of {glucose|dextrose|glucose powder|glucose sugar|sugar}
    glucose energy tablet(s), glucose biscuit(s), raw sugar, granulated sugar, spoonful of honey
    """
)
SUGAR_DRINKS: Final = Block(
    """
    {sugar|glucose|sugary|sugared|dextrose} {water|drink|juice|tea|solution|mix}, water {with|and} {glucose|dextrose|sugar|honey}
    glucose {in|with} water, sugar in water, glucose d, glucose c
    """
)
SUGAR_SPANISH: Final = Block(
    """
    {pastilla|pastillita|tableta|comprimido|caramelo|dulce|gel|geles|polvo|sobre|sobrecito|tab|terron
      terrones|cubo|cubito|gomita|cucharada|cucharadita|cuchara|bolsita|ampolla|chicle|gragea}(s) de {glucosa|dextrosa|azucar|glucosa oral}
    gel glucosado, glucosa {en gel|en polvo|oral|en tabletas|en pastillas}, glucotab, {azucar|glucosa} en sobre
    sobres de azucar, terrones de azucar
    """
)
SUGAR_DRINKS_SPANISH: Final = Block(
    """
    agua {con|de} {azucar|glucosa|miel|panela|piloncillo}, agua {azucarada|glucosada}, suero con azucar
    {te|jugo} azucarado, bebida azucarada, azucar {en|con} agua, glucosa {en|con} agua
    """
)

#: `sugar tablets` by the piece is eaten; `my sugar tablet` is the drug against it.
SUGAR_TABLETS: Final = phrases("sugar {tablet|tab}(s)")
#: Names of sugar that are eaten only behind one of `EATEN`, and with no number behind them.
BARE_SUGAR: Final = frozenset({"glucose", "dextrose", "glucosa", "dextrosa", "glucola"})
EATEN: Final = frozenset(
    phrases(
        """
        took, take, taking, taken, had, ate, eaten, eating, drank, drink, drinking, chewed, chewing
        sucked, swallowed, gave, some, more, bit of, of, used, licked, having, tome, comi, bebi, tomo
        mastique, chupe, poco de, di, dimos, tomado, tomando
        """
    )
)
