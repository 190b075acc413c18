"""Cautions, rechecks and lines about safety in Spanish.

Read each aloud before changing it: one instruction a sentence, short words, no dose, no drug to
take (glucagon that was prescribed apart), no diagnosis, no praise beside bad news. `{emergency}`
is a number or `local_emergency`, so that both have to fit after `al`.
"""

from dataclasses import replace

from bot.words.cautions import CautionSentences, Voice

OWN = Voice(
    sugar_now="Tome 15 g de azúcar rápida ahora: {sugar}.",
    sugar_now_again="Tome 15 g de azúcar rápida ahora, una vez más: {sugar}.",
    sugar_if_still_low=(
        "¿Sigue por debajo de {limit}, o siente señales de un valor bajo? "
        "Tome 15 g de azúcar rápida ahora: {sugar}."
    ),
    treat_as_low="Trate esto como un valor bajo. Tome 15 g de azúcar rápida ahora: {sugar}.",
    sugar_if_low="Si sale por debajo de {limit}, tome 15 g de azúcar rápida ahora: {sugar}.",
    retest_asked="Mida otra vez 15 minutos después del azúcar. Le preguntaré a las {at}.",
    retest_alone="Mida otra vez 15 minutos después del azúcar, a las {at}.",
    not_alone="No se quede a solas. Pida a alguien que le acompañe.",
    no_driving="No maneje.",
    no_driving_yet=(
        "No maneje hasta que vuelva a {limit} y se sienta bien. "
        "Luego espere el tiempo que diga su equipo de salud."
    ),
    then_eat="Cuando ya esté bien, coma algo si falta más de una hora para su próxima comida.",
    low_alarm=(
        "Llame al {emergency} si no puede tragar, si se pone peor o si no mejora en 15 minutos."
    ),
    wash="Lave y seque sus manos.",
    test_again="Luego mida otra vez, ahora mismo.",
    water="Tome agua, salvo que le pidieran limitar los líquidos.",
    water_within_limit="Respete su límite de líquidos. Tome agua solo dentro de ese límite.",
    call_if_repeat="Si sale igual de alto, llame hoy a su equipo de salud.",
    call_if_it_stays="Llame a su equipo de salud si sigue así de alto por un día.",
    urgent_if_high_again="Si su medidor muestra HI otra vez, vaya a urgencias ahora.",
    urgent_care="Vaya a urgencias ahora.",
    high_signs=(
        "Llame al {emergency} si vomita o le duele la barriga. "
        "Llame también si su aliento huele a fruta o si respira rápido y hondo. "
        "Llame si siente mucho sueño o confusión."
    ),
    very_low="{value} es muy bajo.",
    meter_low="LO en el medidor quiere decir muy bajo.",
    low="{value} es bajo.",
    very_high="{value} es muy alto.",
    meter_high="HI en el medidor quiere decir muy alto.",
    meter_high_again="El medidor muestra HI otra vez.",
    high="{value} es alto.",
    high_again="Está alto otra vez, en {value}, así que cuenta.",
    was_low="{value} {taken} era bajo.",
    was_high="{value} {taken} era alto.",
    planned=(
        "{value} es alto, y su equipo de salud ya lo sabe. "
        "Llame al {emergency} si vomita, le duele la barriga o se siente muy mal."
    ),
    fingers="Restos de comida en los dedos pueden dar un número muy alto.",
    emergency_call="Llame al {emergency} ahora.",
    emergency_value="El medidor mostró {value}.",
    emergency_signs="Con estas señales hace falta un médico ya.",
    emergency_still_low="El azúcar no ha bastado hasta ahora.",
    nothing_by_mouth="Si la persona no está bien despierta, no le dé nada por la boca.",
    emergency_sugar=(
        "Quien está despierto y tiene un valor bajo necesita 15 g de azúcar rápida ahora: {sugar}."
    ),
    glucagon="Si tiene un valor bajo y no despierta, use glucagón si se lo recetaron.",
    stay="No se quede a solas hasta que llegue la ayuda. No maneje.",
    call_today="Llame hoy a su equipo de salud.",
    call_this_week="Llame esta semana a su equipo de salud.",
    two_days="Tuvo {from_} o más en dos días seguidos. Esta vez fue {value}.",
    third_high="Tuvo tres valores altos en siete días, cada uno de {from_} o más.",
    second_low="Tuvo dos valores bajos en siete días, cada uno por debajo de {limit}.",
    only_they="Solo ellos pueden revisar su medicina. No la cambie por su cuenta.",
    find_reason="Ellos pueden ayudarle a saber por qué. No cambie la medicina por su cuenta.",
    feeling_counts="Lo que siente cuenta más que el número.",
    then_test="Luego mida.",
    test_now="Mida ahora.",
    send_number="Mándeme el número.",
    wrong_dose_call="Llame a su equipo de salud o al {emergency} ahora.",
    wrong_dose_tell="Diga qué tomó y cuándo.",
    nobody_watches="Nadie vigila este chat día y noche.",
    care_team_first="Lo que diga su equipo de salud va primero.",
    back="{value}: ya volvió a {limit} o más.",
    back_eat="Coma algo si falta más de una hora para su próxima comida.",
    recheck="Por favor, mida otra vez ahora y mándeme el número.",
    recheck_second="Aún no tengo un número nuevo. Por favor, mida ahora o pida ayuda a alguien.",
    recheck_hour=(
        "Por favor, mida una vez más ahora. Un valor bajo puede volver cuando se acaba el azúcar."
    ),
    recheck_high="Por favor, lave y seque sus manos. Luego mida otra vez y mándeme el número.",
    recheck_alarm="Llame al {emergency} si se siente peor.",
)

#: For a grandson, a wife, a carer who writes for the person.
HELPER = replace(
    OWN,
    sugar_now="Dele 15 g de azúcar rápida ahora, si la persona está despierta: {sugar}.",
    sugar_now_again=(
        "Dele 15 g de azúcar rápida ahora, una vez más, si la persona está despierta: {sugar}."
    ),
    sugar_if_still_low=(
        "¿Sigue la persona por debajo de {limit}, o con señales de un valor bajo? "
        "Si está despierta, dele 15 g de azúcar rápida ahora: {sugar}."
    ),
    treat_as_low=(
        "Trate esto como un valor bajo. Si la persona está despierta y puede tragar, "
        "dele 15 g de azúcar rápida ahora: {sugar}."
    ),
    sugar_if_low="Si sale por debajo de {limit}, dele 15 g de azúcar rápida ahora: {sugar}.",
    not_alone="No deje sola a la persona.",
    no_driving="La persona no debe manejar.",
    no_driving_yet=(
        "La persona no debe manejar hasta que vuelva a {limit} y se sienta bien. "
        "Luego espera el tiempo que diga su equipo de salud."
    ),
    then_eat=(
        "Cuando ya esté bien, dele de comer si falta más de una hora para la próxima comida."
    ),
    low_alarm=(
        "Llame al {emergency} si la persona no puede tragar, si se pone peor "
        "o si no mejora en 15 minutos."
    ),
    wash="Lave y seque las manos de la persona.",
    water="Dele agua, salvo que le pidieran limitar los líquidos.",
    water_within_limit="Respete su límite de líquidos. Dele agua solo dentro de ese límite.",
    call_if_repeat="Si sale igual de alto, llame hoy al equipo de salud de la persona.",
    call_if_it_stays="Llame al equipo de salud de la persona si sigue así de alto por un día.",
    urgent_if_high_again="Si el medidor muestra HI otra vez, vayan a urgencias ahora.",
    urgent_care="Vayan a urgencias ahora.",
    high_signs=(
        "Llame al {emergency} si la persona vomita o le duele la barriga. "
        "Llame también si el aliento huele a fruta o si respira rápido y hondo. "
        "Llame si tiene mucho sueño o confusión."
    ),
    planned=(
        "{value} es alto, y el equipo de salud ya lo sabe. "
        "Llame al {emergency} si la persona vomita, le duele la barriga o está muy mal."
    ),
    stay="Quédese con la persona hasta que llegue la ayuda. La persona no debe manejar.",
    call_today="Llame hoy al equipo de salud de la persona.",
    call_this_week="Llame esta semana al equipo de salud de la persona.",
    two_days="La persona tuvo {from_} o más en dos días seguidos. Esta vez fue {value}.",
    third_high="La persona tuvo tres valores altos en siete días, cada uno de {from_} o más.",
    second_low=("La persona tuvo dos valores bajos en siete días, cada uno por debajo de {limit}."),
    only_they="Solo el equipo de salud puede revisar la medicina. No la cambie por su cuenta.",
    find_reason=(
        "El equipo de salud puede ayudar a saber por qué. No cambie la medicina por su cuenta."
    ),
    feeling_counts="Lo que siente la persona cuenta más que el número.",
    wrong_dose_call="Llame al equipo de salud de la persona o al {emergency} ahora.",
    care_team_first="Lo que diga el equipo de salud de la persona va primero.",
    back="{value}: la persona ya volvió a {limit} o más.",
    back_eat="Dele de comer si falta más de una hora para su próxima comida.",
    recheck="Por favor, mida a la persona otra vez ahora y mándeme el número.",
    recheck_second="Aún no tengo un número nuevo. Por favor, mida a la persona ahora.",
    recheck_hour=(
        "Por favor, mida a la persona una vez más ahora. "
        "Un valor bajo puede volver cuando se acaba el azúcar."
    ),
    recheck_high=(
        "Por favor, lave y seque las manos de la persona. Luego mida otra vez y mándeme el número."
    ),
    recheck_alarm="Llame al {emergency} si la persona se pone peor.",
)

CAUTIONS = CautionSentences(
    own=OWN,
    helper=HELPER,
    local_emergency="número de emergencias de su zona",
    taken_today="a las {clock}",
    taken_before="en un día anterior",
    owed="Puede que este aviso no le llegara {taken}:",
    sugar="1 cucharada de azúcar, o media taza (120 mL) de jugo",
    sugar_within_limit="1 cucharada de azúcar o de miel",
    sugar_glucose_only=("tabletas o gel de glucosa. Nada más actúa lo bastante rápido en su caso"),
    back_thanks="Gracias por medir otra vez.",
    back_one_more="Le pediré una prueba más a las {at}.",
    doubtful="Guardé su {value}, pero no cuenta. La nueva prueba, {repeat}, ocupa su lugar.",
    surprise=(
        "{value} está lejos de su último valor, {before}. "
        "Por favor, lave y seque sus manos. Luego mida otra vez y mándeme el número."
    ),
    just_under_goal="{value} está apenas por debajo de su meta. No es un valor bajo.",
    activity_first="Antes de moverse, coma un poco de pan o fruta: {value} es menos de {from_}.",
    activity_sugar="Tenga azúcar rápida a mano.",
    low_taken_back="Gracias por corregirlo. Por favor, mida una vez más ahora, para estar seguros.",
    educator_told=(
        "Le avisé a su educador, como usted aceptó. Puede que no lo vea enseguida. "
        "Nadie vigila este chat día y noche."
    ),
    medicine_advice=(
        "No puedo ayudar con la medicina ni con cuánta tomar. Por favor, pregunte a su equipo de "
        "salud o en la farmacia. No la cambie por su cuenta. "
        "Si se siente muy mal, llame al {emergency}."
    ),
    pregnancy=(
        "Gracias por decirlo. Llame hoy a su equipo de salud: en el embarazo las metas son otras. "
        "Hasta que le den las suyas guardo sus números y no los juzgo. "
        "Le sigo avisando de valores bajos y muy altos."
    ),
    other_people=(
        "Solo puedo ayudar a un adulto con diabetes tipo 2: usted. "
        "Los niños y otras personas tienen otras metas. Pregunte a su equipo de salud. "
        "Si alguien se siente muy mal, llame al {emergency}."
    ),
    others_low_first=(
        "Si tiene diabetes y está despierta, dele 15 g de azúcar rápida ahora. "
        "Es 1 cucharada de azúcar, o media taza (120 mL) de jugo."
    ),
    others_emergency=(
        "Si no está bien despierta, no le dé nada por la boca y llame al {emergency}."
    ),
    others_who="¿Quién es? Si se trata de usted, dígame cómo se siente.",
)
