"""Spanish words that are no slip of the finger, as `real_words` has them for English."""

# ruff: noqa: SIM905 - word sets read best as one string

from typing import Final

REAL_WORDS_SPANISH: Final = frozenset(
    """
    aborda abrigo abrio acaban acabara acabas acaso acelerar acepte acordar acordo acosta actas
    actuan actuar actuo agarra agarre agotado agrada aguante aguda aguila alberga alegra
    alimento almas altos amaba amantes americana americanas andan andas andes andina animales
    anota ansioso apostar arabe arabes arcades archivos arequipa armadas armando arresto arroja
    arrojado artes asiento aspira atacado ataques atentado atrae autos ayudan ayude ayudo baila
    bailes bajado bajan bajen bajos balon banca bancas banco bandas bando bandos banos barata
    baratas baring barked barrera barril barrios barro basada basado basan basicas bastantes
    batallas batallon bebes bello bellos benito bicicletas bigote blancos bloqueando bocas
    bolsillo bolsillos bonitos bonos bordes borges borrador bosque botes botin botones breves
    brisa brote buitre buitres burgos buscas busque caballo cabezas cabida cabrera cagando
    caidas caido caiga calcula calculos calico calles calmar camara camaras camilo camina
    caminos campos canales canta canto capas caras carcel cargado carino carnet caros carreras
    carros cartera casada casados casas cashing causado cejas censura cerradas cerrado cerros
    certeza charla chaval checa chiapas chinas choque chorro ciegos cierran cierre cierta
    circuito citas claros clary clases clashing clave clavo clero cocaina coches codigos cogido
    coherente colgado colina colinas coloco comas comen comia comico comicos comoda complejo
    compra compran compulsion concejo concentra confesion confeso conocimientos conscientes
    consiga constantes contacto contactos contado contados contando conte contestar contesto
    contigo controla copas copiar corre correa corredor corren correo corria cortes cortina
    corto coruna cosecha costado costas coste costera crear creas crees cresta cuarta cuartos
    cubanos cuenca cuento cuerdas cuero cuerpos cuervo cuestan cueste cueva cuida damos dario
    darse debera deberian deberias debio decada decia decida decido decis defuse delia
    demasiados deportes derechas derechos desaparece desaparecen descargas descartar desierto
    despacho despertado diaria diarios dioses disculpas disena divina divino dobles dolar donar
    dormia duelo duermen duran echado ejercito eliminando empeno enfocado enganar enmienda
    entero entiendan entienden entraba entran entrar entrara entras entren envian envios
    equivocados escalera escriben escribia escribio escrita escritas escuelas esfera espada
    espana esperan esperar esperas esposas estaban estabas estadio estadistica estafa estara
    estaras estare estaria esten estetica estudia estudios excesivo existe experta extiende
    extrana extrema extremo facil falda fallar fallas faltar faltas falto fanned farsa fieles
    financiar financiera financieras financiero financieros fincas fingir flota fluido flujo
    fractura frase frases frenar frias fruto fuente fueras fuertes gafas ganan ganar garaje
    garantia garantiza gigante graba grabada graficos granito grasa grasas gratis gustaba
    haberme habiendo habiles hablado hablarle hablarte hable hablen habra habre hacerle hacerte
    hacienda hadas hagan halla hallan hallar haras haria hayas hazlo hecha hechos herido
    hermanas hijas hilos historias historica hombre honrado horribles hueco huecos huesca huesos
    hyping iglesias ignoran ignorar imposibles infame infeccion informa informes informo inmensa
    intenso intente izquierdas jabon jaded jaden judea judios jueces juega juegos jugado labio
    labores lados lanzado largas largo largos lavado leales lenguas lentes levanta levantan
    levantando libera lidera ligero limita limite limpias limpios liquido llamados llaman llamas
    llano llave llaves llega llegara llegas llegues llenar llevar logran lograr logros luchas
    machado machos madera madura magos malaga malestar maletas mames manada mananas mancha
    manchas mandan mandaron mandos manejar manta mantenga manto maraton marcado marcha marchas
    marcho marcial marek margo mariano marko marte martillo mataron matas mediacion medias
    medicas medida medios mejia mejora mejore menor mentes menuda mercados meritos metio mezcla
    miente mineria miraba mirad miradas mirado miseria mojado molesta molestan molesto molina
    momentos monje monos monta montes moviendo muchisimos muera mueren muertas muerte muertos
    mueven multas mundos mutua necesita necesite nervios nevera niego ninas nombra nombres
    nombro normas nuevos objetiva oceano olvidan olvidas olvidemos olviden olvides opina opinar
    ovejas pacto padece padilla pagado pagando pagar pagara pagas pagos paises pajama pajaro
    palabra paliza palmas palos panales panico parada paradas parado paran parana parche parches
    parecen parecer pareces pared parques parra partida partidos partio parto pasados pasamos
    pasan pasara pasen patada patadas patas pautas payaso pecado peces pechos pedia pedian pekin
    pelotas penas perdidas perdonar perdone perla perlas peron persa pesadas pesado pesar peste
    petro pierda pierdas pikes pilares pinos pinta pintada pirata pisar pistas placa placas
    placer plaga plana planetas planos planta plantea plantel planteo playa playas plazas plazo
    plazos poblado poblados pobres podamos podes podian podias podra podras podremos poetica
    pokes ponce ponemos ponen ponga pongan pongas ponia ponian posee positiva positivo positivos
    practica practico predio prefiere preguntan preguntarle preguntarse preguntes pregunto
    premio presa presas presenta presente presento preso presos presunta presuntos preve previa
    previos prision privadas profundas profundos programar programas prometio puertos pulido
    punta puras quedar quedarte quedas queden quedes queja quejarse quema querian querias quiera
    quieren quinta quisieran quisieras quitado quitan quitarle quiza raices rapidas rapidos
    rasgos raton ratones reaccion reaccionar reciben recibi recibia recibio recibira reconocen
    reconocer recordo recorte recta recuerde recuerden recuerdos registra registradas regresan
    regresar relata repetidas repetido repite repitio reporta reportes resena responda responden
    responder respondo resta resuelto resulta resultando resulte resulto reunen revuelta
    rincones robado rodilla ruben ruina saben sabiendo sabio sabras sacado sacas salado salas
    saldo saldra salia salida salido saluda salva salvar salve salvo sanos saquen saqueo secures
    sedes segui seguia seguida seguidos seguira seguire segundas sello sellos senado sentados
    sentidos sento sepan sepas servicios sesion severa severo sewed shakti siembra siendo sienta
    sienten sientes sigas signo signos sillas sistemas slugs sobra sobran soltar sombras
    sonrisas sostiene subido sucio sueco sueldo sueldos suele suelto sueltos sumado sumando
    sumar supera supero tabla tamano tantos tarea templar templo tendencias teneis tenencia
    tenes tenias teniendo tercera tercio terminen ternura terremotos terribles tesis thrifty
    tiempos tiendas tiende tierna tierras tinta tiran tirar tiros tocaba tocan tocando tocar
    tolerar tomado tomados tomamos toman tomara tonta trabajado trabajen trabajos traia trajes
    trajo trama tramo trampa tratado tratamos tratando tratar tratas trate trato trazado
    tremendo trenes trimble trono tropa tropas truco tunel urgencia uribe vacias vacios valer
    valia valido validos valio valora varia varian variar varios velas venga vengas ventajas
    ventana ventas veras verga verle verme vicio vidrio viena vienen vienes viento viniendo
    visita visito vistas viste visto vivia vivienda vivio voces volvia volvio vuela vuelto
    vuelven vuelves wrenching
    """.split()
)
