<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Buying</name>
    <message>
        <source>packet</source>
        <translation>paquete</translation>
    </message>
    <message>
        <source>bunch</source>
        <translation>manojo</translation>
    </message>
    <message>
        <source>head</source>
        <translation>cabeza</translation>
    </message>
    <message>
        <source>piece of root</source>
        <translation>trozo de raíz</translation>
    </message>
    <message>
        <source>jar</source>
        <translation>frasco</translation>
    </message>
    <message>
        <source>bottle</source>
        <translation>botella</translation>
    </message>
    <message>
        <source>lemon</source>
        <translation>limón</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>chicken</source>
        <translation>pollo</translation>
    </message>
    <message>
        <source>turkey</source>
        <translation>pavo</translation>
    </message>
    <message>
        <source>duck</source>
        <translation>pato</translation>
    </message>
    <message>
        <source>goose</source>
        <translation>ganso</translation>
    </message>
    <message>
        <source>guinea fowl</source>
        <translation>gallina de Guinea</translation>
    </message>
    <message>
        <source>pheasant</source>
        <translation>faisán</translation>
    </message>
    <message>
        <source>quail</source>
        <translation>codorniz</translation>
    </message>
    <message>
        <source>squab</source>
        <translation>pichón</translation>
    </message>
    <message>
        <source>beef</source>
        <translation>res</translation>
    </message>
    <message>
        <source>veal</source>
        <translation>ternera</translation>
    </message>
    <message>
        <source>bison</source>
        <translation>bisonte</translation>
    </message>
    <message>
        <source>lamb</source>
        <translation>cordero</translation>
    </message>
    <message>
        <source>goat</source>
        <translation>cabra</translation>
    </message>
    <message>
        <source>pork</source>
        <translation>cerdo</translation>
    </message>
    <message>
        <source>venison</source>
        <translation>venado</translation>
    </message>
    <message>
        <source>elk</source>
        <translation>wapití</translation>
    </message>
    <message>
        <source>moose</source>
        <translation>alce</translation>
    </message>
    <message>
        <source>rabbit</source>
        <translation>conejo</translation>
    </message>
    <message>
        <source>hare</source>
        <translation>liebre</translation>
    </message>
    <message>
        <source>cod</source>
        <translation>bacalao</translation>
    </message>
    <message>
        <source>haddock</source>
        <translation>eglefino</translation>
    </message>
    <message>
        <source>pollock</source>
        <translation>abadejo</translation>
    </message>
    <message>
        <source>halibut</source>
        <translation>fletán</translation>
    </message>
    <message>
        <source>snapper</source>
        <translation>pargo</translation>
    </message>
    <message>
        <source>rockfish</source>
        <translation>pez de roca</translation>
    </message>
    <message>
        <source>flatfish</source>
        <translation>pescado plano</translation>
    </message>
    <message>
        <source>sea bass</source>
        <translation>lubina (róbalo)</translation>
    </message>
    <message>
        <source>whiting</source>
        <translation>merlán</translation>
    </message>
    <message>
        <source>salmon</source>
        <translation>salmón</translation>
    </message>
    <message>
        <source>trout</source>
        <translation>trucha</translation>
    </message>
    <message>
        <source>white fish</source>
        <translation>pescado blanco</translation>
    </message>
    <message>
        <source>whole chicken</source>
        <translation>pollo entero</translation>
    </message>
    <message>
        <source>chicken leg quarters</source>
        <translation>cuartos traseros de pollo</translation>
    </message>
    <message>
        <source>chicken legs</source>
        <translation>piernas enteras de pollo</translation>
    </message>
    <message>
        <source>chicken drumsticks</source>
        <translation>piernas de pollo, parte baja</translation>
    </message>
    <message>
        <source>chicken thighs</source>
        <translation>piernas de pollo, parte alta</translation>
    </message>
    <message>
        <source>chicken backs</source>
        <translation>espinazos de pollo</translation>
    </message>
    <message>
        <source>chicken wings</source>
        <translation>alas de pollo</translation>
    </message>
    <message>
        <source>chicken necks</source>
        <translation>pescuezos de pollo</translation>
    </message>
    <message>
        <source>chicken feet</source>
        <translation>patas de pollo</translation>
    </message>
    <message>
        <source>chicken heads</source>
        <translation>cabezas de pollo</translation>
    </message>
    <message>
        <source>stewing hen, whole</source>
        <translation>gallina entera para caldo</translation>
    </message>
    <message>
        <source>chicken carcass, bare</source>
        <translation>carcasa de pollo, sin carne</translation>
    </message>
    <message>
        <source>whole turkey</source>
        <translation>pavo entero</translation>
    </message>
    <message>
        <source>turkey backs</source>
        <translation>espinazos de pavo</translation>
    </message>
    <message>
        <source>turkey wings</source>
        <translation>alas de pavo</translation>
    </message>
    <message>
        <source>turkey drumsticks</source>
        <translation>piernas de pavo, parte baja</translation>
    </message>
    <message>
        <source>turkey thighs</source>
        <translation>piernas de pavo, parte alta</translation>
    </message>
    <message>
        <source>turkey legs</source>
        <translation>piernas enteras de pavo</translation>
    </message>
    <message>
        <source>turkey necks</source>
        <translation>pescuezos de pavo</translation>
    </message>
    <message>
        <source>turkey feet</source>
        <translation>patas de pavo</translation>
    </message>
    <message>
        <source>turkey carcass, bare</source>
        <translation>carcasa de pavo, sin carne</translation>
    </message>
    <message>
        <source>whole squab</source>
        <translation>pichón entero</translation>
    </message>
    <message>
        <source>whole duck</source>
        <translation>pato entero</translation>
    </message>
    <message>
        <source>duck legs</source>
        <translation>piernas enteras de pato</translation>
    </message>
    <message>
        <source>duck backs</source>
        <translation>espinazos de pato</translation>
    </message>
    <message>
        <source>duck wings</source>
        <translation>alas de pato</translation>
    </message>
    <message>
        <source>duck necks</source>
        <translation>pescuezos de pato</translation>
    </message>
    <message>
        <source>duck feet</source>
        <translation>patas de pato</translation>
    </message>
    <message>
        <source>duck carcass, bare</source>
        <translation>carcasa de pato, sin carne</translation>
    </message>
    <message>
        <source>whole goose</source>
        <translation>ganso entero</translation>
    </message>
    <message>
        <source>goose legs</source>
        <translation>piernas enteras de ganso</translation>
    </message>
    <message>
        <source>goose backs</source>
        <translation>espinazos de ganso</translation>
    </message>
    <message>
        <source>goose wings</source>
        <translation>alas de ganso</translation>
    </message>
    <message>
        <source>goose necks</source>
        <translation>pescuezos de ganso</translation>
    </message>
    <message>
        <source>goose feet</source>
        <translation>patas de ganso</translation>
    </message>
    <message>
        <source>goose carcass, bare</source>
        <translation>carcasa de ganso, sin carne</translation>
    </message>
    <message>
        <source>whole guinea fowl</source>
        <translation>gallina de Guinea entera</translation>
    </message>
    <message>
        <source>whole pheasant</source>
        <translation>faisán entero</translation>
    </message>
    <message>
        <source>pheasant carcass, bare</source>
        <translation>carcasa de faisán, sin carne</translation>
    </message>
    <message>
        <source>whole quail</source>
        <translation>codorniz entera</translation>
    </message>
    <message>
        <source>beef shank</source>
        <translation>jarrete (chamorro) de res</translation>
    </message>
    <message>
        <source>beef oxtail</source>
        <translation>rabo de res</translation>
    </message>
    <message>
        <source>beef short ribs</source>
        <translation>costilla corta de res</translation>
    </message>
    <message>
        <source>beef back ribs</source>
        <translation>costillas de lomo de res</translation>
    </message>
    <message>
        <source>beef neck bones</source>
        <translation>huesos de cuello de res</translation>
    </message>
    <message>
        <source>beef chuck, bone in</source>
        <translation>paleta de res con hueso</translation>
    </message>
    <message>
        <source>beef knuckle bones</source>
        <translation>huesos de rodilla de res</translation>
    </message>
    <message>
        <source>beef marrow bones</source>
        <translation>huesos de tuétano de res</translation>
    </message>
    <message>
        <source>beef feet</source>
        <translation>patas de res</translation>
    </message>
    <message>
        <source>beef bones, bare</source>
        <translation>huesos de res, sin carne</translation>
    </message>
    <message>
        <source>bison shank</source>
        <translation>jarrete (chamorro) de bisonte</translation>
    </message>
    <message>
        <source>bison short ribs</source>
        <translation>costilla corta de bisonte</translation>
    </message>
    <message>
        <source>bison oxtail</source>
        <translation>rabo de bisonte</translation>
    </message>
    <message>
        <source>bison neck bones</source>
        <translation>huesos de cuello de bisonte</translation>
    </message>
    <message>
        <source>bison knuckle bones</source>
        <translation>huesos de rodilla de bisonte</translation>
    </message>
    <message>
        <source>bison marrow bones</source>
        <translation>huesos de tuétano de bisonte</translation>
    </message>
    <message>
        <source>bison bones, bare</source>
        <translation>huesos de bisonte, sin carne</translation>
    </message>
    <message>
        <source>veal shank</source>
        <translation>jarrete (chamorro) de ternera</translation>
    </message>
    <message>
        <source>veal neck bones</source>
        <translation>huesos de cuello de ternera</translation>
    </message>
    <message>
        <source>veal breast, bone in</source>
        <translation>pecho de ternera con hueso</translation>
    </message>
    <message>
        <source>veal knuckle bones</source>
        <translation>huesos de rodilla de ternera</translation>
    </message>
    <message>
        <source>veal feet</source>
        <translation>patas de ternera</translation>
    </message>
    <message>
        <source>veal marrow bones</source>
        <translation>huesos de tuétano de ternera</translation>
    </message>
    <message>
        <source>veal bones, bare</source>
        <translation>huesos de ternera, sin carne</translation>
    </message>
    <message>
        <source>lamb shank</source>
        <translation>jarrete (chamorro) de cordero</translation>
    </message>
    <message>
        <source>lamb neck</source>
        <translation>cuello de cordero</translation>
    </message>
    <message>
        <source>lamb shoulder, bone in</source>
        <translation>espaldilla de cordero con hueso</translation>
    </message>
    <message>
        <source>lamb breast, bone in</source>
        <translation>pecho de cordero con hueso</translation>
    </message>
    <message>
        <source>lamb knuckle bones</source>
        <translation>huesos de rodilla de cordero</translation>
    </message>
    <message>
        <source>lamb feet</source>
        <translation>patas de cordero</translation>
    </message>
    <message>
        <source>lamb marrow bones</source>
        <translation>huesos de tuétano de cordero</translation>
    </message>
    <message>
        <source>lamb bones, bare</source>
        <translation>huesos de cordero, sin carne</translation>
    </message>
    <message>
        <source>goat shank</source>
        <translation>jarrete (chamorro) de cabra</translation>
    </message>
    <message>
        <source>goat neck</source>
        <translation>cuello de cabra</translation>
    </message>
    <message>
        <source>goat shoulder, bone in</source>
        <translation>espaldilla de cabra con hueso</translation>
    </message>
    <message>
        <source>goat ribs</source>
        <translation>costillas de cabra</translation>
    </message>
    <message>
        <source>goat knuckle bones</source>
        <translation>huesos de rodilla de cabra</translation>
    </message>
    <message>
        <source>goat feet</source>
        <translation>patas de cabra</translation>
    </message>
    <message>
        <source>goat bones, bare</source>
        <translation>huesos de cabra, sin carne</translation>
    </message>
    <message>
        <source>venison shank</source>
        <translation>jarrete (chamorro) de venado</translation>
    </message>
    <message>
        <source>venison neck</source>
        <translation>cuello de venado</translation>
    </message>
    <message>
        <source>venison ribs</source>
        <translation>costillas de venado</translation>
    </message>
    <message>
        <source>venison knuckle bones</source>
        <translation>huesos de rodilla de venado</translation>
    </message>
    <message>
        <source>venison marrow bones</source>
        <translation>huesos de tuétano de venado</translation>
    </message>
    <message>
        <source>venison bones, bare</source>
        <translation>huesos de venado, sin carne</translation>
    </message>
    <message>
        <source>elk shank</source>
        <translation>jarrete (chamorro) de wapití</translation>
    </message>
    <message>
        <source>elk neck</source>
        <translation>cuello de wapití</translation>
    </message>
    <message>
        <source>elk ribs</source>
        <translation>costillas de wapití</translation>
    </message>
    <message>
        <source>elk knuckle bones</source>
        <translation>huesos de rodilla de wapití</translation>
    </message>
    <message>
        <source>elk marrow bones</source>
        <translation>huesos de tuétano de wapití</translation>
    </message>
    <message>
        <source>elk bones, bare</source>
        <translation>huesos de wapití, sin carne</translation>
    </message>
    <message>
        <source>moose shank</source>
        <translation>jarrete (chamorro) de alce</translation>
    </message>
    <message>
        <source>moose neck</source>
        <translation>cuello de alce</translation>
    </message>
    <message>
        <source>moose ribs</source>
        <translation>costillas de alce</translation>
    </message>
    <message>
        <source>moose knuckle bones</source>
        <translation>huesos de rodilla de alce</translation>
    </message>
    <message>
        <source>moose marrow bones</source>
        <translation>huesos de tuétano de alce</translation>
    </message>
    <message>
        <source>moose bones, bare</source>
        <translation>huesos de alce, sin carne</translation>
    </message>
    <message>
        <source>whole rabbit</source>
        <translation>conejo entero</translation>
    </message>
    <message>
        <source>rabbit legs</source>
        <translation>piernas enteras de conejo</translation>
    </message>
    <message>
        <source>rabbit carcass, bare</source>
        <translation>carcasa de conejo, sin carne</translation>
    </message>
    <message>
        <source>whole hare</source>
        <translation>liebre entera</translation>
    </message>
    <message>
        <source>pork feet</source>
        <translation>patas de cerdo</translation>
    </message>
    <message>
        <source>pork hocks</source>
        <translation>codillos de cerdo</translation>
    </message>
    <message>
        <source>pork ribs</source>
        <translation>costillas de cerdo</translation>
    </message>
    <message>
        <source>pork back ribs</source>
        <translation>costillas de lomo de cerdo</translation>
    </message>
    <message>
        <source>pork tails</source>
        <translation>colas de cerdo</translation>
    </message>
    <message>
        <source>pork ears</source>
        <translation>orejas de cerdo</translation>
    </message>
    <message>
        <source>pork neck bones</source>
        <translation>huesos de cuello de cerdo</translation>
    </message>
    <message>
        <source>pork bones, bare</source>
        <translation>huesos de cerdo, sin carne</translation>
    </message>
    <message>
        <source>whole cod</source>
        <translation>bacalao entero</translation>
    </message>
    <message>
        <source>cod heads</source>
        <translation>cabezas de bacalao</translation>
    </message>
    <message>
        <source>cod frames</source>
        <translation>espinas de bacalao (sin filetes)</translation>
    </message>
    <message>
        <source>whole haddock</source>
        <translation>eglefino entero</translation>
    </message>
    <message>
        <source>haddock heads</source>
        <translation>cabezas de eglefino</translation>
    </message>
    <message>
        <source>haddock frames</source>
        <translation>espinas de eglefino (sin filetes)</translation>
    </message>
    <message>
        <source>whole pollock</source>
        <translation>abadejo entero</translation>
    </message>
    <message>
        <source>pollock heads</source>
        <translation>cabezas de abadejo</translation>
    </message>
    <message>
        <source>pollock frames</source>
        <translation>espinas de abadejo (sin filetes)</translation>
    </message>
    <message>
        <source>halibut heads</source>
        <translation>cabezas de fletán</translation>
    </message>
    <message>
        <source>halibut frames</source>
        <translation>espinas de fletán (sin filetes)</translation>
    </message>
    <message>
        <source>whole snapper</source>
        <translation>pargo entero</translation>
    </message>
    <message>
        <source>snapper heads</source>
        <translation>cabezas de pargo</translation>
    </message>
    <message>
        <source>snapper frames</source>
        <translation>espinas de pargo (sin filetes)</translation>
    </message>
    <message>
        <source>whole rockfish</source>
        <translation>pez de roca entero</translation>
    </message>
    <message>
        <source>rockfish heads</source>
        <translation>cabezas de pez de roca</translation>
    </message>
    <message>
        <source>rockfish frames</source>
        <translation>espinas de pez de roca (sin filetes)</translation>
    </message>
    <message>
        <source>whole flatfish</source>
        <translation>pescado plano entero</translation>
    </message>
    <message>
        <source>flatfish heads</source>
        <translation>cabezas de pescado plano</translation>
    </message>
    <message>
        <source>flatfish frames</source>
        <translation>espinas de pescado plano (sin filetes)</translation>
    </message>
    <message>
        <source>whole sea bass</source>
        <translation>lubina (róbalo) entera</translation>
    </message>
    <message>
        <source>sea bass heads</source>
        <translation>cabezas de lubina (róbalo)</translation>
    </message>
    <message>
        <source>sea bass frames</source>
        <translation>espinas de lubina (róbalo) (sin filetes)</translation>
    </message>
    <message>
        <source>whole whiting</source>
        <translation>merlán entero</translation>
    </message>
    <message>
        <source>whiting heads</source>
        <translation>cabezas de merlán</translation>
    </message>
    <message>
        <source>whiting frames</source>
        <translation>espinas de merlán (sin filetes)</translation>
    </message>
    <message>
        <source>whole salmon</source>
        <translation>salmón entero</translation>
    </message>
    <message>
        <source>salmon heads</source>
        <translation>cabezas de salmón</translation>
    </message>
    <message>
        <source>salmon frames</source>
        <translation>espinas de salmón (sin filetes)</translation>
    </message>
    <message>
        <source>whole trout</source>
        <translation>trucha entera</translation>
    </message>
    <message>
        <source>trout heads</source>
        <translation>cabezas de trucha</translation>
    </message>
    <message>
        <source>trout frames</source>
        <translation>espinas de trucha (sin filetes)</translation>
    </message>
    <message>
        <source>whole white fish</source>
        <translation>pescado blanco entero</translation>
    </message>
    <message>
        <source>white fish heads</source>
        <translation>cabezas de pescado blanco</translation>
    </message>
    <message>
        <source>white fish frames</source>
        <translation>espinas de pescado blanco (sin filetes)</translation>
    </message>
    <message>
        <source>onion</source>
        <translation>cebolla</translation>
    </message>
    <message>
        <source>medium onion</source>
        <translation>cebolla mediana</translation>
    </message>
    <message>
        <source>sweet onion</source>
        <translation>cebolla dulce</translation>
    </message>
    <message>
        <source>shallot</source>
        <translation>chalote</translation>
    </message>
    <message>
        <source>spring onion</source>
        <translation>cebolleta</translation>
    </message>
    <message>
        <source>medium spring onion</source>
        <translation>cebolleta mediana</translation>
    </message>
    <message>
        <source>leek</source>
        <translation>puerro</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>apio</translation>
    </message>
    <message>
        <source>medium stalk</source>
        <translation>tallo mediano</translation>
    </message>
    <message>
        <source>celeriac</source>
        <translation>apio nabo</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>taza</translation>
    </message>
    <message>
        <source>carrot</source>
        <translation>zanahoria</translation>
    </message>
    <message>
        <source>medium carrot</source>
        <translation>zanahoria mediana</translation>
    </message>
    <message>
        <source>parsnip</source>
        <translation>chirivía</translation>
    </message>
    <message>
        <source>cup, sliced</source>
        <translation>taza, en rodajas</translation>
    </message>
    <message>
        <source>turnip</source>
        <translation>nabo</translation>
    </message>
    <message>
        <source>medium turnip</source>
        <translation>nabo mediano</translation>
    </message>
    <message>
        <source>rutabaga</source>
        <translation>colinabo</translation>
    </message>
    <message>
        <source>medium rutabaga</source>
        <translation>colinabo mediano</translation>
    </message>
    <message>
        <source>fennel</source>
        <translation>bulbo de hinojo</translation>
    </message>
    <message>
        <source>bulb</source>
        <translation>bulbo</translation>
    </message>
    <message>
        <source>butternut squash</source>
        <translation>calabaza moscada</translation>
    </message>
    <message>
        <source>cup, cubed</source>
        <translation>taza, en cubos</translation>
    </message>
    <message>
        <source>acorn squash</source>
        <translation>calabaza bellota</translation>
    </message>
    <message>
        <source>squash</source>
        <translation>calabaza</translation>
    </message>
    <message>
        <source>winter squash</source>
        <translation>calabaza de invierno</translation>
    </message>
    <message>
        <source>zucchini</source>
        <translation>calabacín</translation>
    </message>
    <message>
        <source>medium zucchini</source>
        <translation>calabacín mediano</translation>
    </message>
    <message>
        <source>summer squash</source>
        <translation>calabaza de verano</translation>
    </message>
    <message>
        <source>medium squash</source>
        <translation>calabaza mediana</translation>
    </message>
    <message>
        <source>mushroom</source>
        <translation>hongo</translation>
    </message>
    <message>
        <source>medium mushroom</source>
        <translation>hongo mediano</translation>
    </message>
    <message>
        <source>shiitake</source>
        <translation>hongo shiitake</translation>
    </message>
    <message>
        <source>kelp</source>
        <translation>alga kombu</translation>
    </message>
    <message>
        <source>2 tbsp</source>
        <translation>2 cdas.</translation>
    </message>
    <message>
        <source>ginger</source>
        <translation>jengibre</translation>
    </message>
    <message>
        <source>slice</source>
        <translation>rodaja</translation>
    </message>
    <message>
        <source>garlic</source>
        <translation>ajo</translation>
    </message>
    <message>
        <source>clove</source>
        <translation>diente</translation>
    </message>
    <message>
        <source>parsley, fresh</source>
        <translation>perejil fresco</translation>
    </message>
    <message>
        <source>sprig</source>
        <translation>ramita</translation>
    </message>
    <message>
        <source>cilantro, fresh</source>
        <translation>cilantro fresco</translation>
    </message>
    <message>
        <source>thyme, fresh</source>
        <translation>tomillo fresco</translation>
    </message>
    <message>
        <source>tsp</source>
        <translation>cdta.</translation>
    </message>
    <message>
        <source>rosemary, fresh</source>
        <translation>romero fresco</translation>
    </message>
    <message>
        <source>sage, fresh</source>
        <translation>salvia fresca</translation>
    </message>
    <message>
        <source>dill, fresh</source>
        <translation>eneldo fresco</translation>
    </message>
    <message>
        <source>bay leaf</source>
        <translation>laurel</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>thyme, dried</source>
        <translation>tomillo seco</translation>
    </message>
    <message>
        <source>rosemary, dried</source>
        <translation>romero seco</translation>
    </message>
    <message>
        <source>sage, dried</source>
        <translation>salvia seca</translation>
    </message>
    <message>
        <source>parsley, dried</source>
        <translation>perejil seco</translation>
    </message>
    <message>
        <source>oregano, dried</source>
        <translation>orégano seco</translation>
    </message>
    <message>
        <source>marjoram, dried</source>
        <translation>mejorana seca</translation>
    </message>
    <message>
        <source>peppercorns, whole</source>
        <translation>pimienta en grano</translation>
    </message>
    <message>
        <source>allspice, whole</source>
        <translation>pimienta de Jamaica en grano</translation>
    </message>
    <message>
        <source>cloves, whole</source>
        <translation>clavo de olor entero</translation>
    </message>
    <message>
        <source>coriander seed, whole</source>
        <translation>semilla de cilantro entera</translation>
    </message>
    <message>
        <source>black pepper, ground</source>
        <translation>pimienta negra molida</translation>
    </message>
    <message>
        <source>white pepper, ground</source>
        <translation>pimienta blanca molida</translation>
    </message>
    <message>
        <source>table salt</source>
        <translation>sal de mesa</translation>
    </message>
    <message>
        <source>mineral salt</source>
        <translation>sal mineral</translation>
    </message>
    <message>
        <source>sea salt</source>
        <translation>sal marina</translation>
    </message>
    <message>
        <source>cider vinegar</source>
        <translation>vinagre de manzana</translation>
    </message>
    <message>
        <source>tbsp</source>
        <translation>cda.</translation>
    </message>
    <message>
        <source>white vinegar</source>
        <translation>vinagre blanco</translation>
    </message>
    <message>
        <source>lemon juice</source>
        <translation>jugo de limón</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>poultry</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>pescado</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>&quot;%1&quot; is no caution that Ladlework knows; choose one of the list.</source>
        <translation>Ladlework no conoce la precaución «%1»; elija una de la lista.</translation>
    </message>
    <message>
        <source>A sodium limit belongs to the caution &quot;Sodium restricted&quot;; enter it there.</source>
        <translation>El límite de sodio va con la precaución «Sodio restringido»; anótelo allí.</translation>
    </message>
    <message>
        <source>The sodium limit must be 1 to 10,000 mg a day.</source>
        <translation>El límite de sodio debe ser de 1 a 10 000 mg al día.</translation>
    </message>
    <message>
        <source>Ask the treating clinician before starting or raising the amount.</source>
        <translation>Pregunte al médico tratante antes de empezar o de subir la cantidad.</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>The limit recorded is %1 mg of sodium a day.</source>
        <translation>El límite anotado es de %1 mg de sodio al día.</translation>
    </message>
</context>
<context>
    <name>CautionKind</name>
    <message>
        <source>Pregnancy</source>
        <translation>Embarazo</translation>
    </message>
    <message>
        <source>Ask the treating clinician before starting or raising the amount, and about the salt and fluid that suit this pregnancy.</source>
        <translation>Pregunte al médico tratante antes de empezar o de subir la cantidad, y también cuánta sal y cuánto líquido convienen en este embarazo.</translation>
    </message>
    <message>
        <source>Breastfeeding</source>
        <translation>Lactancia</translation>
    </message>
    <message>
        <source>Ask the treating clinician before starting or raising the amount, and about the salt and fluid that suit while breastfeeding.</source>
        <translation>Pregunte al médico tratante antes de empezar o de subir la cantidad, y también cuánta sal y cuánto líquido convienen durante la lactancia.</translation>
    </message>
    <message>
        <source>Kidney disease</source>
        <translation>Enfermedad de los riñones</translation>
    </message>
    <message>
        <source>Ask the treating clinician before drinking stock every day: it carries sodium, potassium, phosphorus, protein and fluid.</source>
        <translation>Pregunte al médico tratante antes de beber caldo todos los días: el caldo lleva sodio, potasio, fósforo, proteína y líquido.</translation>
    </message>
    <message>
        <source>Heart disease or high blood pressure</source>
        <translation>Enfermedad del corazón o presión alta</translation>
    </message>
    <message>
        <source>Ask the treating clinician before drinking stock every day, and what sodium and fluid a day are allowed.</source>
        <translation>Pregunte al médico tratante antes de beber caldo todos los días, y también cuánto sodio y cuánto líquido se permiten al día.</translation>
    </message>
    <message>
        <source>Liver disease</source>
        <translation>Enfermedad del hígado</translation>
    </message>
    <message>
        <source>Ask the treating clinician before drinking stock every day, and what protein, sodium and fluid a day are allowed.</source>
        <translation>Pregunte al médico tratante antes de beber caldo todos los días, y también cuánta proteína, cuánto sodio y cuánto líquido se permiten al día.</translation>
    </message>
    <message>
        <source>Sodium restricted</source>
        <translation>Sodio restringido</translation>
    </message>
    <message>
        <source>Ask the treating clinician before any pot is salted, and what sodium a day is allowed in all.</source>
        <translation>Pregunte al médico tratante antes de echar sal a cualquier olla, y también cuánto sodio se permite al día en total.</translation>
    </message>
    <message>
        <source>Protein restricted</source>
        <translation>Proteína restringida</translation>
    </message>
    <message>
        <source>Ask the treating clinician before drinking stock every day, and what protein a day is allowed in all.</source>
        <translation>Pregunte al médico tratante antes de beber caldo todos los días, y también cuánta proteína se permite al día en total.</translation>
    </message>
    <message>
        <source>Takes a blood thinner</source>
        <translation>Toma un anticoagulante</translation>
    </message>
    <message>
        <source>Ask the treating clinician before changing what is eaten and drunk every day: greens and herbs in the pot may matter for the dose.</source>
        <translation>Pregunte al médico tratante antes de cambiar lo que se come y se bebe cada día: las hojas verdes y las hierbas de la olla pueden influir en la dosis.</translation>
    </message>
    <message>
        <source>Diabetes</source>
        <translation>Diabetes</translation>
    </message>
    <message>
        <source>Ask the treating clinician before changing what is eaten and drunk every day: medicine may have to be fitted to it.</source>
        <translation>Pregunte al médico tratante antes de cambiar lo que se come y se bebe cada día: quizá haya que ajustar la medicina.</translation>
    </message>
    <message>
        <source>Underweight or losing weight</source>
        <translation>Peso bajo o pérdida de peso</translation>
    </message>
    <message>
        <source>Ask the treating clinician before stock takes the place of any food; weigh regularly, and call when weight goes on falling.</source>
        <translation>Pregunte al médico tratante antes de que el caldo reemplace cualquier comida; pese con regularidad y llame si el peso sigue bajando.</translation>
    </message>
    <message>
        <source>History of an eating disorder</source>
        <translation>Antecedente de un trastorno de la alimentación</translation>
    </message>
    <message>
        <source>Ask the treating clinician before setting amounts, counting or leaving out any food, and share this plan with them.</source>
        <translation>Pregunte al médico tratante antes de fijar cantidades, de contar o de dejar cualquier alimento, y muéstrele este plan.</translation>
    </message>
    <message>
        <source>Fish allergy</source>
        <translation>Alergia al pescado</translation>
    </message>
    <message>
        <source>Ask the treating clinician before any fish enters the kitchen&apos;s pots; gelatin from a fish stock counts as fish.</source>
        <translation>Pregunte al médico tratante antes de que entre pescado en las ollas de la cocina; la gelatina de un caldo de pescado cuenta como pescado.</translation>
    </message>
    <message>
        <source>Shellfish allergy</source>
        <translation>Alergia a los mariscos</translation>
    </message>
    <message>
        <source>Ask the treating clinician before any shellfish or fish enters the kitchen&apos;s pots, and keep pots and ladles apart.</source>
        <translation>Pregunte al médico tratante antes de que entren mariscos o pescado en las ollas de la cocina, y use ollas y cucharones aparte.</translation>
    </message>
    <message>
        <source>Celery allergy</source>
        <translation>Alergia al apio</translation>
    </message>
    <message>
        <source>Ask the treating clinician before any celery, celeriac or celery seed goes into a pot or a herb mix.</source>
        <translation>Pregunte al médico tratante antes de poner apio, apio nabo o semilla de apio en una olla o en una mezcla de hierbas.</translation>
    </message>
    <message>
        <source>Other allergy</source>
        <translation>Otra alergia</translation>
    </message>
    <message>
        <source>Ask the treating clinician before the food concerned goes into any pot of the house.</source>
        <translation>Pregunte al médico tratante antes de poner ese alimento en cualquier olla de la casa.</translation>
    </message>
    <message>
        <source>Other condition under treatment</source>
        <translation>Otra enfermedad en tratamiento</translation>
    </message>
    <message>
        <source>Ask the treating clinician before starting or raising the amount.</source>
        <translation>Pregunte al médico tratante antes de empezar o de subir la cantidad.</translation>
    </message>
</context>
<context>
    <name>DayWords</name>
    <message>
        <source>d MMMM yyyy</source>
        <extracomment>A date format of Qt: d, MMMM and yyyy stand for the day, the month and the year.</extracomment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
</context>
<context>
    <name>Handout</name>
    <message>
        <source>%1 is under 6 months: no stock. Ask the doctor or nurse who looks after the baby.</source>
        <translation>%1 tiene menos de 6 meses: nada de caldo. Pregunte al médico o a la enfermera que cuida al bebé.</translation>
    </message>
    <message>
        <source>%1 (allergy)</source>
        <translation>%1 (alergia)</translation>
    </message>
    <message>
        <source>%1 (but for the new tries)</source>
        <translation>%1 (salvo en las pruebas nuevas)</translation>
    </message>
    <message>
        <source>%1 does not have: %2.</source>
        <translation>%1 no toma: %2.</translation>
    </message>
    <message>
        <source>%1 has only a little of: %2.</source>
        <translation>%1 toma solo un poco de: %2.</translation>
    </message>
    <message>
        <source>Stop sign</source>
        <translation>Señal de alto</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Take care, and whom to call</source>
        <translation>Cuidados, y a quién llamar</translation>
    </message>
    <message>
        <source>Ask first</source>
        <translation>Pregunte primero</translation>
    </message>
    <message>
        <source>Who does not have what</source>
        <translation>Quién no toma qué</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>When you see one of these signs, give no more stock. Call %1 at once when it is bad or when you are in doubt.</source>
        <translation>Si ve una de estas señales, no dé más caldo. Llame al %1 de inmediato si es grave o si tiene dudas.</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>These pages do not take the place of a doctor&apos;s advice. Go on with all medicine as your doctor said.</source>
        <translation>Estas páginas no reemplazan el consejo de un médico. Siga con todas las medicinas como le dijo su médico.</translation>
    </message>
    <message>
        <source>nothing this week.</source>
        <translation>nada esta semana.</translation>
    </message>
    <message>
        <source>%1 each day.</source>
        <translation>%1 cada día.</translation>
    </message>
    <message>
        <source>%1 each day from %2 on.</source>
        <translation>%1 cada día a partir del %2.</translation>
    </message>
    <message>
        <source>%1 on %2. When all goes well, %3 by %4.</source>
        <translation>%1 el %2. Si todo va bien, %3 para el %4.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Not for %1, who is under 6 months. Ask the doctor or nurse who looks after the baby.</source>
        <translation>No es para %1, que tiene menos de 6 meses. Pregunte al médico o a la enfermera que cuida al bebé.</translation>
    </message>
    <message>
        <source>%1: no stock for now. Wait until we have talked.</source>
        <translation>%1: por ahora, nada de caldo. Espere hasta que hablemos.</translation>
    </message>
    <message>
        <source>%1: no amount is set yet.</source>
        <translation>%1: todavía no hay una cantidad fijada.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not from: %1.</source>
        <translation>No de: %1.</translation>
    </message>
    <message>
        <source>Your week with stock</source>
        <translation>Su semana con caldo</translation>
    </message>
    <message>
        <source>Week of %1 to %2</source>
        <translation>Semana del %1 al %2</translation>
    </message>
    <message>
        <source>Who drinks what</source>
        <translation>Quién bebe qué</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Semana del %1</translation>
    </message>
    <message>
        <source>%1 - week of %2</source>
        <translation>%1 - semana del %2</translation>
    </message>
    <message>
        <source>Member %1</source>
        <translation>Persona %1</translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hora</numerusform>
            <numerusform>%n horas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>de %1 a %n día</numerusform>
            <numerusform>de %1 a %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n month(s)</source>
        <translation>
            <numerusform>de %1 a %n mes</numerusform>
            <numerusform>de %1 a %n meses</numerusform>
        </translation>
    </message>
    <message>
        <source>Cool it fast</source>
        <translation>Enfríelo rápido</translation>
    </message>
    <message>
        <source>Take the pot off the heat and strain the stock.</source>
        <translation>Quite la olla del fuego y cuele el caldo.</translation>
    </message>
    <message>
        <source>Pour it into shallow pans, no more than %1 deep.</source>
        <translation>Viértalo en recipientes bajos, con no más de %1 de hondo.</translation>
    </message>
    <message>
        <source>Set the pans in ice water and stir now and then.</source>
        <translation>Ponga los recipientes en agua con hielo y remueva de vez en cuando.</translation>
    </message>
    <message>
        <source>It must drop from %1 to %2 within %3.</source>
        <translation>Debe bajar de %1 a %2 en no más de %3.</translation>
    </message>
    <message>
        <source>It must be down to %1 within %2 in all.</source>
        <translation>Debe llegar a %1 en no más de %2 en total.</translation>
    </message>
    <message>
        <source>Put it in the fridge within %1. If the room is hotter than %2, within %3.</source>
        <translation>Póngalo en el refrigerador en no más de %1. Si en el cuarto hay más de %2, en no más de %3.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Do not put a deep pot of hot stock in the fridge. It can take a day (%1) to cool, and that is too long. If the stock was not cooled in time, throw it out.</source>
        <translation>No ponga en el refrigerador una olla honda de caldo caliente. Puede tardar un día (%1) en enfriarse, y eso es demasiado. Si el caldo no se enfrió a tiempo, tírelo.</translation>
    </message>
    <message>
        <source>Keep it cold</source>
        <translation>Guárdelo en frío</translation>
    </message>
    <message>
        <source>Keep the fridge at %1 or below. Write the day on each jar. Count from the day you cooked.</source>
        <translation>Mantenga el refrigerador a %1 o menos. Escriba el día en cada frasco. Cuente desde el día en que cocinó.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>In the fridge</source>
        <translation>En el refrigerador</translation>
    </message>
    <message>
        <source>In the freezer</source>
        <translation>En el congelador</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Caldo</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Cooked meat</source>
        <translation>Carne cocida</translation>
    </message>
    <message>
        <source>Raw chicken and other birds</source>
        <translation>Pollo y otras aves, crudos</translation>
    </message>
    <message>
        <source>Other raw meat</source>
        <translation>Otras carnes crudas</translation>
    </message>
    <message>
        <source>Raw fish</source>
        <translation>Pescado crudo</translation>
    </message>
    <message numerus="yes">
        <source>Charts differ. One gives soup %1 in the fridge. An older one gives meat broth %2. Your practice uses %n day(s).</source>
        <translation>
            <numerusform>Las tablas no coinciden. Una da a la sopa %1 en el refrigerador. Otra más antigua da al caldo de carne %2. Su consulta usa %n día.</numerusform>
            <numerusform>Las tablas no coinciden. Una da a la sopa %1 en el refrigerador. Otra más antigua da al caldo de carne %2. Su consulta usa %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, cooked on %2: drink or freeze by %3.</source>
        <translation>%1, hecho el %2: beba o congele a más tardar el %3.</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation>Usar a más tardar</translation>
    </message>
    <message>
        <source>Freeze, thaw and heat</source>
        <translation>Congelar, descongelar y calentar</translation>
    </message>
    <message>
        <source>Freeze what you will not drink in time. Do it on the day you cook.</source>
        <translation>Congele lo que no va a beber a tiempo. Hágalo el mismo día en que cocina.</translation>
    </message>
    <message>
        <source>Leave room at the top of the jar, for stock swells as it freezes.</source>
        <translation>Deje espacio arriba en el frasco, porque el caldo crece al congelarse.</translation>
    </message>
    <message numerus="yes">
        <source>Move it to the fridge the day before you need it. Never thaw it on the counter. Drink it within %n day(s).</source>
        <translation>
            <numerusform>Páselo al refrigerador el día antes de usarlo. Nunca lo descongele sobre la mesa. Bébalo en no más de %n día.</numerusform>
            <numerusform>Páselo al refrigerador el día antes de usarlo. Nunca lo descongele sobre la mesa. Bébalo en no más de %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>Heat stock until it boils. Heat meat to %1 or more. Then let it cool until it is safe to sip.</source>
        <translation>Caliente el caldo hasta que hierva. Caliente la carne a %1 o más. Luego deje que se entibie hasta que se pueda beber sin quemarse.</translation>
    </message>
    <message>
        <source>Take note</source>
        <translation>Tenga en cuenta</translation>
    </message>
    <message>
        <source>Keep raw fish cold until it goes in the pot. Fish that got warm can make you ill, and cooking does not mend that.</source>
        <translation>Guarde el pescado crudo en frío hasta que entre en la olla. El pescado que se calentó puede enfermar, y cocinarlo no lo arregla.</translation>
    </message>
    <message>
        <source>Strain stock for a child through a fine sieve. Small bones can choke.</source>
        <translation>Cuele el caldo de un niño por un colador fino. Los huesos pequeños pueden ahogar.</translation>
    </message>
    <message>
        <source>This is not home canning. Do not put up jars for the shelf with these steps. Ask your local extension service how that is done.</source>
        <translation>Esto no es para hacer conservas. No guarde frascos fuera del frío con estos pasos. Pregunte a su servicio local de extensión cómo se hace.</translation>
    </message>
    <message>
        <source>Your local food safety rules go first if they are stricter.</source>
        <translation>Si las reglas de su lugar sobre alimentos son más estrictas, valen esas.</translation>
    </message>
    <message>
        <source>Cool it and keep it</source>
        <translation>Enfriar y guardar</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Fuentes: %1.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n paso</numerusform>
            <numerusform>%n pasos</numerusform>
        </translation>
    </message>
    <message>
        <source>A day is good when nearly all was drunk (%1 % or more) and nothing above %2 was felt.</source>
        <translation>Un día es bueno si se bebió casi todo (%1 % o más) y el malestar no pasó de %2.</translation>
    </message>
    <message>
        <source>Go up 1 step after a good day.</source>
        <translation>Suba 1 paso después de un día bueno.</translation>
    </message>
    <message numerus="yes">
        <source>Go up 1 step after %n good day(s).</source>
        <translation>
            <numerusform>Suba 1 paso después de %n día bueno.</numerusform>
            <numerusform>Suba 1 paso después de %n días buenos.</numerusform>
        </translation>
    </message>
    <message>
        <source>go back %1.</source>
        <translation>baje %1.</translation>
    </message>
    <message>
        <source>go back %1 and stay there for %2.</source>
        <translation>baje %1 y quédese ahí %2.</translation>
    </message>
    <message>
        <source>Do not go up: the amounts go down by our plan.</source>
        <translation>No suba: las cantidades bajan según nuestro plan.</translation>
    </message>
    <message>
        <source>Felt %1: go on as planned.</source>
        <translation>Malestar %1: siga según el plan.</translation>
    </message>
    <message>
        <source>Felt %1: stay on the same step and count the good days anew.</source>
        <translation>Malestar %1: quédese en el mismo paso y cuente de nuevo los días buenos.</translation>
    </message>
    <message>
        <source>If it comes again within %1: %2</source>
        <translation>Si vuelve en un plazo de %1: %2</translation>
    </message>
    <message>
        <source>Felt %1: %2</source>
        <translation>Malestar %1: %2</translation>
    </message>
    <message>
        <source>Drank less than planned: stay on the same step.</source>
        <translation>Bebió menos de lo previsto: quédese en el mismo paso.</translation>
    </message>
    <message>
        <source>Missed a day: stay on the same step. Missed %1 in a row: go back 1 step.</source>
        <translation>Faltó un día: quédese en el mismo paso. Faltó %1 seguidos: baje 1 paso.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>How it was borne, 0 to 10</source>
        <translation>Malestar, de 0 a 10</translation>
    </message>
    <message>
        <source>%1 (this week starts here)</source>
        <translation>%1 (esta semana empieza aquí)</translation>
    </message>
    <message>
        <source>No stock for now. Wait until we have talked.</source>
        <translation>Por ahora, nada de caldo. Espere hasta que hablemos.</translation>
    </message>
    <message>
        <source>Drink the amount of the day. Tick the box. Then write down how it was borne: 0 is nothing felt, 10 is the worst there is.</source>
        <translation>Beba la cantidad del día. Marque la casilla. Luego anote el malestar: 0 es nada, 10 es lo peor que hay.</translation>
    </message>
    <message>
        <source>The amounts go down by our plan. If a day was not good, use the rules below.</source>
        <translation>Las cantidades bajan según nuestro plan. Si un día no fue bueno, use las reglas de abajo.</translation>
    </message>
    <message>
        <source>The amounts hold when each day is a good day. If a day was not, use the steps and the rules below.</source>
        <translation>Las cantidades valen si cada día es un día bueno. Si un día no lo fue, use los pasos y las reglas de abajo.</translation>
    </message>
    <message>
        <source>New tries this week</source>
        <translation>Pruebas nuevas de esta semana</translation>
    </message>
    <message>
        <source>When anything is felt after a new try: write it down, stop the new try and call us.</source>
        <translation>Si siente algo después de una prueba nueva: anótelo, deje la prueba y llámenos.</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Los pasos</translation>
    </message>
    <message>
        <source>When to go up, stay, go back or stop</source>
        <translation>Cuándo subir, quedarse, bajar o parar</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <extracomment>A date format of Qt: dddd, d and MMMM stand for the weekday, the day and the month.</extracomment>
        <translation>dddd d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>your local emergency number</source>
        <translation>número local de emergencia</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Your practice</source>
        <translation>Su consulta</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>cerca de %1</translation>
    </message>
    <message>
        <source>about %1 (%2 to %3)</source>
        <translation>cerca de %1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>Cook on</source>
        <translation>Cocinar el</translation>
    </message>
    <message>
        <source>%1, start at %2</source>
        <translation>%1, hora de inicio: %2</translation>
    </message>
    <message>
        <source>Drink or freeze by</source>
        <translation>Beber o congelar a más tardar el</translation>
    </message>
    <message>
        <source>In</source>
        <translation>En</translation>
    </message>
    <message>
        <source>Simmer for</source>
        <translation>A fuego lento</translation>
    </message>
    <message>
        <source>Stock to expect</source>
        <translation>Caldo que saldrá</translation>
    </message>
    <message>
        <source>Meat for the table</source>
        <translation>Carne para la mesa</translation>
    </message>
    <message>
        <source>Not for %1, who is under 6 months.</source>
        <translation>No es para %1, que tiene menos de 6 meses.</translation>
    </message>
    <message>
        <source>Not for %1.</source>
        <translation>No es para %1.</translation>
    </message>
    <message>
        <source>Not for %1: %2.</source>
        <translation>No es para %1: %2.</translation>
    </message>
    <message>
        <source>Strain out: %1.</source>
        <translation>Colar y quitar: %1.</translation>
    </message>
    <message>
        <source>Leave in: %1.</source>
        <translation>Dejar en el caldo: %1.</translation>
    </message>
    <message>
        <source>You need</source>
        <translation>Lo que necesita</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>The amounts are a best guess. Write down how much stock you got: ________</source>
        <translation>Las cantidades son un cálculo. Anote cuánto caldo salió: ________</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Put in %1. Pour in %2 of water. Bring it to a gentle simmer and skim off the foam.</source>
        <translation>Ponga en la olla: %1. Añada %2 de agua. Lleve a un hervor suave y quite la espuma.</translation>
    </message>
    <message>
        <source>Add %1.</source>
        <translation>Añada %1.</translation>
    </message>
    <message>
        <source>Turn off the heat. Strain the stock and cool it fast.</source>
        <translation>Apague el fuego. Cuele el caldo y enfríelo rápido.</translation>
    </message>
    <message>
        <source>Turn off the heat. Stir in %1. Strain the stock and cool it fast.</source>
        <translation>Apague el fuego. Eche %1 y remueva. Cuele el caldo y enfríelo rápido.</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>tras %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>next day</source>
        <translation>al día siguiente</translation>
    </message>
    <message>
        <source>salt: %1</source>
        <translation>sal: %1</translation>
    </message>
    <message>
        <source>salt: %1 (%2 of fine table salt; weigh coarse salt)</source>
        <translation>sal: %1 (%2 de sal fina de mesa; si es gruesa, pésela)</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>water: %1</source>
        <translation>agua: %1</translation>
    </message>
    <message>
        <source>%1: %2 x %3 (%4)</source>
        <translation>%1: %2 x %3 (%4)</translation>
    </message>
    <message>
        <source>meat and bones</source>
        <translation>carne y huesos</translation>
    </message>
    <message numerus="yes">
        <source>Then watch for %n day(s) without it.</source>
        <translation>
            <numerusform>Luego observe %n día sin probarlo.</numerusform>
            <numerusform>Luego observe %n días sin probarlo.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 tries %3 of stock with %4.%5</source>
        <translation>%1: %2 prueba %3 de caldo con %4.%5</translation>
    </message>
    <message>
        <source>Meat</source>
        <translation>Carne</translation>
    </message>
    <message>
        <source>Fish</source>
        <translation>Pescado</translation>
    </message>
    <message>
        <source>Vegetables</source>
        <translation>Verduras</translation>
    </message>
    <message>
        <source>Fresh herbs</source>
        <translation>Hierbas frescas</translation>
    </message>
    <message>
        <source>Dry goods</source>
        <translation>Despensa</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation>Lista de compras</translation>
    </message>
    <message>
        <source>Cross out what you have at home. Buy raw meat and fish last and keep them cold on the way.</source>
        <translation>Tache lo que ya tiene en casa. Compre al final la carne y el pescado crudos y llévelos en frío.</translation>
    </message>
    <message>
        <source>On the stove</source>
        <translation>En el fuego</translation>
    </message>
    <message>
        <source>ddd d</source>
        <translation>ddd d</translation>
    </message>
    <message>
        <source>The week at a glance</source>
        <translation>La semana de un vistazo</translation>
    </message>
    <message>
        <source>No pots are planned for this week.</source>
        <translation>No hay ollas previstas para esta semana.</translation>
    </message>
    <message>
        <source>The amounts hold when each day is a good day. If not, the page of each person says what to do. Drink the oldest stock first.</source>
        <translation>Las cantidades valen si cada día es un día bueno. Si no, la página de cada persona dice qué hacer. Beba primero el caldo más viejo.</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d MMM yyyy</translation>
    </message>
    <message>
        <source>Fridge: use by %1</source>
        <translation>Refrigerador: usar hasta el %1</translation>
    </message>
    <message>
        <source>Freezer: use by %1</source>
        <translation>Congelador: usar hasta el %1</translation>
    </message>
    <message>
        <source>Heat until it boils.</source>
        <translation>Caliente hasta que hierva.</translation>
    </message>
    <message>
        <source>Cooked on %1</source>
        <translation>Hecho el %1</translation>
    </message>
    <message>
        <source>A4, 14 labels</source>
        <translation>A4, 14 etiquetas</translation>
    </message>
    <message>
        <source>Letter, 10 labels</source>
        <translation>Carta, 10 etiquetas</translation>
    </message>
    <message>
        <source>Jar labels</source>
        <translation>Etiquetas para frascos</translation>
    </message>
    <message>
        <source>Any stop sign (see &quot;Take care&quot;): stop the stock. Call %1, then call us.</source>
        <translation>Cualquier señal de alto (vea «Cuidados»): deje el caldo. Llame al %1 y luego a nosotros.</translation>
    </message>
    <message>
        <source>Felt %1, or any stop sign (see &quot;Take care&quot;): stop the stock. Call %2 if it is bad, then call us.</source>
        <translation>Malestar %1, o cualquier señal de alto (vea «Cuidados»): deje el caldo. Llame al %2 si es grave y luego a nosotros.</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Reaction</source>
        <translation>Reacción</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Log of the week</source>
        <translation>Registro de la semana</translation>
    </message>
    <message>
        <source>Nobody has an amount to drink yet.</source>
        <translation>Todavía nadie tiene una cantidad para beber.</translation>
    </message>
    <message>
        <source>Fill in a line for each person each night. Write how much was drunk, or 0. Write what was felt and how strong it was: 0 is nothing, 10 is the worst there is.</source>
        <translation>Llene cada noche una línea por persona. Anote cuánto bebió, o 0. Anote qué malestar sintió y qué tan fuerte fue: 0 es nada, 10 es lo peor que hay.</translation>
    </message>
    <message>
        <source>To type this sheet in as a table: its first line is &quot;%1&quot;. Write each day as %2.</source>
        <translation>Para copiar esta hoja como tabla, la primera línea es &quot;%1&quot;. Escriba cada día como %2.</translation>
    </message>
    <message>
        <source>tsp is a teaspoon, the small spoon. tbsp is a tablespoon, the large one.</source>
        <translation>cdta. es una cucharadita, la cuchara pequeña. cda. es una cucharada, la grande.</translation>
    </message>
    <message>
        <source>h:mm AP</source>
        <extracomment>A time format of Qt; AP or ap stands for &quot;AM&quot; and &quot;PM&quot; in capital or small letters.</extracomment>
        <translation>h:mm&#xa0;ap</translation>
    </message>
    <message>
        <source>For the house</source>
        <translation>Para la casa</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>%1: you have it at home (%2 needed)</source>
        <translation>%1: ya lo tiene en casa (necesita %2)</translation>
    </message>
    <message>
        <source> - %1 needed, %2 at home</source>
        <translation> - necesita %1, tiene %2 en casa</translation>
    </message>
    <message>
        <source> - %1 needed</source>
        <translation> - necesita %1</translation>
    </message>
    <message>
        <source>About %1 in all.</source>
        <translation>Cerca de %1 en total.</translation>
    </message>
    <message numerus="yes">
        <source>About %1, and %n thing(s) without a price.</source>
        <translation>
            <numerusform>Cerca de %1, y %n cosa sin precio.</numerusform>
            <numerusform>Cerca de %1, y %n cosas sin precio.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 of %3, to drink on the two days after.</source>
        <translation>%1: %2 de %3, para beber en los dos días siguientes.</translation>
    </message>
    <message>
        <source>Move from the freezer to the refrigerator</source>
        <translation>Pasar del congelador al refrigerador</translation>
    </message>
</context>
<context>
    <name>Keeping</name>
    <message>
        <source>FDA Food Code 2022, 3-501.14</source>
        <translation>FDA Food Code 2022, 3-501.14</translation>
    </message>
    <message>
        <source>USDA FSIS</source>
        <translation>USDA FSIS</translation>
    </message>
    <message>
        <source>University of Nebraska-Lincoln and Iowa State University extension</source>
        <translation>servicios de extensión de University of Nebraska-Lincoln e Iowa State University</translation>
    </message>
    <message>
        <source>USDA as told by extension services</source>
        <translation>USDA, según los servicios de extensión</translation>
    </message>
    <message>
        <source>FoodSafety.gov cold storage chart</source>
        <translation>tabla de conservación en frío de FoodSafety.gov</translation>
    </message>
    <message>
        <source>USDA and FDA storage chart (older)</source>
        <translation>tabla de conservación de USDA y FDA (anterior)</translation>
    </message>
    <message>
        <source>common practice (thawed stock)</source>
        <translation>práctica común (caldo descongelado)</translation>
    </message>
    <message>
        <source>FDA Hazards Guide, chapter 7 (fish)</source>
        <translation>guía de peligros de la FDA, capítulo 7 (pescado)</translation>
    </message>
    <message>
        <source>USDA AIB 539 (canning)</source>
        <translation>USDA AIB 539 (conservas)</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <translation>Español</translation>
    </message>
</context>
<context>
    <name>Measure</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>gota</translation>
    </message>
    <message numerus="yes">
        <source>drops</source>
        <translation>
            <numerusform>gota</numerusform>
            <numerusform>gotas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tsp</source>
        <translation>
            <numerusform>cdta.</numerusform>
            <numerusform>cdtas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tbsp</source>
        <translation>
            <numerusform>cda.</numerusform>
            <numerusform>cdas.</numerusform>
        </translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>oz líq.</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>taza</translation>
    </message>
    <message numerus="yes">
        <source>cups</source>
        <translation>
            <numerusform>taza</numerusform>
            <numerusform>tazas</numerusform>
        </translation>
    </message>
    <message>
        <source>pint</source>
        <translation>pinta</translation>
    </message>
    <message numerus="yes">
        <source>pints</source>
        <translation>
            <numerusform>pinta</numerusform>
            <numerusform>pintas</numerusform>
        </translation>
    </message>
    <message>
        <source>quart</source>
        <translation>cuarto de galón</translation>
    </message>
    <message numerus="yes">
        <source>quarts</source>
        <translation>
            <numerusform>cuarto de galón</numerusform>
            <numerusform>cuartos de galón</numerusform>
        </translation>
    </message>
    <message>
        <source>gallon</source>
        <translation>galón</translation>
    </message>
    <message numerus="yes">
        <source>gallons</source>
        <translation>
            <numerusform>galón</numerusform>
            <numerusform>galones</numerusform>
        </translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>cL</source>
        <translation>cL</translation>
    </message>
    <message>
        <source>dL</source>
        <translation>dL</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message numerus="yes">
        <source>days</source>
        <translation>
            <numerusform>día</numerusform>
            <numerusform>días</numerusform>
        </translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg.</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
</context>
<context>
    <name>Phase</name>
    <message>
        <source>Opening</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Widening</source>
        <translation>Ampliación</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Asentada</translation>
    </message>
</context>
<context>
    <name>Pot</name>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>sal</translation>
    </message>
</context>
<context>
    <name>PotFindings</name>
    <message>
        <source>%1 would take up about %2 mg of sodium a day from this pot alone; the limit is %3 mg. Use less salt or a smaller amount.</source>
        <translation>Solo con esta olla %1 tomaría cerca de %2 mg de sodio al día; el límite es de %3 mg. Use menos sal o una cantidad menor.</translation>
    </message>
    <message>
        <source>the member&apos;s own limit</source>
        <translation>el límite propio de la persona</translation>
    </message>
    <message>
        <source>%1 is under %2 months: no stock. Refer to the clinician who treats the child.</source>
        <translation>%1 tiene menos de %2 meses: nada de caldo. Consulte al médico que atiende al bebé.</translation>
    </message>
    <message>
        <source>%1 is an infant: leave this pot unsalted and salt the others&apos; cups.</source>
        <translation>%1 todavía es bebé: deje esta olla sin sal y eche la sal en las tazas de los demás.</translation>
    </message>
    <message>
        <source>%1 has a recorded allergy or severe reaction and must not have this pot (%2).</source>
        <translation>%1 tiene anotada una alergia o una reacción grave y no debe tomar de esta olla (%2).</translation>
    </message>
    <message>
        <source>%1 may not have this pot (%2).</source>
        <translation>%1 no puede tomar de esta olla (%2).</translation>
    </message>
    <message>
        <source>the member&apos;s own notes</source>
        <translation>las notas propias de la persona</translation>
    </message>
    <message>
        <source>The catalogue has nothing called &quot;%1&quot;, so it kept %2 from nothing. Mend its spelling, or look through the pot for it yourself.</source>
        <translation>El catálogo no tiene nada llamado «%1», así que no se le quitó nada a %2. Corrija cómo está escrito o búsquelo usted en la olla.</translation>
    </message>
    <message>
        <source>Small bones: pick the meat over and strain the stock through a fine sieve for children.</source>
        <translation>Huesos pequeños: revise bien la carne y cuele el caldo de los niños por un colador fino.</translation>
    </message>
    <message>
        <source>The meat lasts this table about %1 days but keeps %2. Freeze some, or use the low-meat variant of the pot.</source>
        <translation>La carne alcanza en esta mesa para unos %1 días, pero se conserva %2. Congele una parte o use la variante de la olla con poca carne.</translation>
    </message>
    <message>
        <source>The meat lasts this table about %1 days but keeps %2. Freeze some.</source>
        <translation>La carne alcanza en esta mesa para unos %1 días, pero se conserva %2. Congele una parte.</translation>
    </message>
    <message>
        <source>%1 L (%2 quarts)</source>
        <translation>%1 L (%2 cuartos de galón)</translation>
    </message>
    <message>
        <source>The %1 are cooked already: this is not meat stock. Use raw ones.</source>
        <translation>Ya están cocidos: %1. Así no sale un caldo de carne. Úselos crudos.</translation>
    </message>
    <message>
        <source>meat stock is made of raw bones (common practice)</source>
        <translation>el caldo de carne se hace con huesos crudos (práctica común)</translation>
    </message>
    <message>
        <source>Marrow bones alone have too little connective tissue. Add knuckles or another jointed cut.</source>
        <translation>Los huesos de tuétano solos tienen muy poco tejido conectivo. Añada huesos de rodilla u otro corte con articulación.</translation>
    </message>
    <message>
        <source>marrow only beside jointed cuts (common practice)</source>
        <translation>tuétano solo junto a cortes con articulación (práctica común)</translation>
    </message>
    <message>
        <source>No cut has a joint or much connective tissue: the stock will not set. Add a jointed cut.</source>
        <translation>Ningún corte tiene articulación ni mucho tejido conectivo: el caldo no cuajará. Añada un corte con articulación.</translation>
    </message>
    <message>
        <source>meat stock needs joints (common practice)</source>
        <translation>el caldo de carne necesita articulaciones (práctica común)</translation>
    </message>
    <message>
        <source>Ground pepper comes in a later phase. Use whole peppercorns and strain them out.</source>
        <translation>La pimienta molida viene en una fase posterior. Use pimienta en grano y cuélela.</translation>
    </message>
    <message>
        <source>phase rule (common practice)</source>
        <translation>regla de la fase (práctica común)</translation>
    </message>
    <message>
        <source>Bare bones and bone broth are kept for a later phase. Use meaty, jointed cuts.</source>
        <translation>Los huesos sin carne y el caldo de huesos se dejan para una fase posterior. Use cortes con carne y articulación.</translation>
    </message>
    <message>
        <source>The usual times are those of a simmer. Under pressure take the times of the cooker&apos;s own book.</source>
        <translation>Los tiempos habituales son para fuego lento. Con presión, siga los tiempos del manual de la olla.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>In %1 h no order of adding lets every cut end inside its own time. A simmer of %2 to %3 h would do.</source>
        <translation>En %1 h no hay orden de añadir en que cada corte termine dentro de su tiempo. Bastaría un fuego lento de %2 a %3 h.</translation>
    </message>
    <message>
        <source>A simmer of %1 h is outside the time of %2. %3 to %4 h would do.</source>
        <translation>Un fuego lento de %1 h queda fuera del tiempo de: %2. Bastarían de %3 a %4 h.</translation>
    </message>
    <message>
        <source>More water than %1 dilutes the stock: about %2 % more has to be drunk for the same protein.</source>
        <translation>Más agua que %1 aclara el caldo: hay que beber cerca de un %2 % más para la misma proteína.</translation>
    </message>
    <message>
        <source>Less water than %1 for these bones. Add some.</source>
        <translation>Hay menos agua que %1 para estos huesos. Añada un poco.</translation>
    </message>
    <message>
        <source>The water does not cover the bones; about %1 would.</source>
        <translation>El agua no cubre los huesos; harían falta cerca de %1.</translation>
    </message>
    <message>
        <source>This pot boils dry: %1 h at this width and lid would boil away %2, and it has %3 to lose. Put the lid on, simmer it for less time or start with more water.</source>
        <translation>Esta olla se queda sin agua: en %1 h, con este ancho y esta tapa, se irían %2, y solo puede perder %3. Ponga la tapa, cueza menos tiempo o empiece con más agua.</translation>
    </message>
    <message>
        <source>About %1 % of the water boils away. Put the lid on or top up with boiling water.</source>
        <translation>Cerca del %1 % del agua se va al hervir. Ponga la tapa o rellene con agua hirviendo.</translation>
    </message>
    <message>
        <source>One cup of this stock holds about %1 mg of sodium, more than the %2 mg of an adult&apos;s whole day. Use less salt.</source>
        <translation>Una taza de este caldo tiene cerca de %1 mg de sodio, más que los %2 mg de todo el día de un adulto. Use menos sal.</translation>
    </message>
    <message>
        <source>This vessel is too small for the pot with room under the rim. One of %1 would do: at this width %2 cm (%3 inches) high.</source>
        <translation>Este recipiente es demasiado pequeño para dejar espacio bajo el borde. Bastaría uno de %1: con este ancho, de %2 cm (%3 pulgadas) de alto.</translation>
    </message>
    <message>
        <source>At least two onions make a tastier pot.</source>
        <translation>Con dos cebollas o más la olla sabe mejor.</translation>
    </message>
    <message>
        <source>At this height water boils at %1 °C (%2 °F), below a usual simmer. The estimate is made for that temperature.</source>
        <translation>A esta altitud el agua hierve a %1 °C (%2 °F), menos que un fuego lento habitual. El cálculo se hace para esa temperatura.</translation>
    </message>
    <message>
        <source>Keep the fish at %1 °F (%2 °C) or below until it goes in: histamine formed in warm fish is not destroyed by cooking.</source>
        <translation>Mantenga el pescado a %1 °F (%2 °C) o menos hasta que entre en la olla: la histamina que se forma en el pescado tibio no se destruye al cocinar.</translation>
    </message>
    <message>
        <source>The cost leaves out %1: no price is set.</source>
        <translation>El costo no incluye %1: no hay precio anotado.</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (continúa)</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>printed %1 · %2</source>
        <translation>impreso el %1 · %2</translation>
    </message>
</context>
<context>
    <name>Shopping</name>
    <message>
        <source>salt, table or mineral</source>
        <translation>sal, de mesa o mineral</translation>
    </message>
</context>
<context>
    <name>StockOnHand</name>
    <message>
        <source>stock of an unknown pot</source>
        <translation>caldo de una olla desconocida</translation>
    </message>
</context>
<context>
    <name>Symptom</name>
    <message>
        <source>Trouble breathing, wheeze or noisy breathing</source>
        <translation>Dificultad para respirar, silbidos o respiración ruidosa</translation>
    </message>
    <message>
        <source>Call the emergency number now. If an adrenaline injector was prescribed, use it at once. Give no more stock.</source>
        <translation>Llame ahora al número de emergencia. Si le recetaron un autoinyector de adrenalina (epinefrina), úselo de inmediato. No dé más caldo.</translation>
    </message>
    <message>
        <source>Swelling of lips, tongue or throat, hoarse voice</source>
        <translation>Hinchazón de labios, lengua o garganta, voz ronca</translation>
    </message>
    <message>
        <source>Hives, flushing or itch over much of the body soon after drinking</source>
        <translation>Ronchas, enrojecimiento o picazón en gran parte del cuerpo poco después de beber</translation>
    </message>
    <message>
        <source>Watch the breathing and call the emergency number as soon as anything else joins it, or when in doubt. Give no more stock.</source>
        <translation>Vigile la respiración y llame al número de emergencia en cuanto aparezca cualquier otra señal, o si tiene dudas. No dé más caldo.</translation>
    </message>
    <message>
        <source>Repeated vomiting or severe belly pain soon after drinking</source>
        <translation>Vómitos repetidos o dolor fuerte de vientre poco después de beber</translation>
    </message>
    <message>
        <source>Call the emergency number when the skin, the breathing or the wakefulness is affected too, or when in doubt. Give no more stock.</source>
        <translation>Llame al número de emergencia si también hay cambios en la piel, en la respiración o en el estado de alerta, o si tiene dudas. No dé más caldo.</translation>
    </message>
    <message>
        <source>Fainting, collapse or going limp</source>
        <translation>Desmayo, colapso o cuerpo flojo</translation>
    </message>
    <message>
        <source>Call the emergency number now. Lay the person down with the legs raised, and do not let them stand up. Give no more stock.</source>
        <translation>Llame ahora al número de emergencia. Acueste a la persona con las piernas en alto y no deje que se levante. No dé más caldo.</translation>
    </message>
    <message>
        <source>Fewer than six wet diapers a day</source>
        <translation>Menos de seis pañales mojados al día</translation>
    </message>
    <message>
        <source>Call the child&apos;s doctor today. Give no more stock until then.</source>
        <translation>Llame hoy al médico del niño. Hasta entonces, no dé más caldo.</translation>
    </message>
    <message>
        <source>Parched mouth, fewer tears, a sunken soft spot, plays less than usual</source>
        <translation>Boca reseca, menos lágrimas, mollera hundida, juega menos que de costumbre</translation>
    </message>
    <message>
        <source>Very fussy or too sleepy, sunken eyes, cool or discoloured hands and feet, wrinkled skin, urine only once or twice a day</source>
        <translation>Muy irritable o con demasiado sueño, ojos hundidos, manos y pies fríos o de otro color, piel arrugada, orina solo una o dos veces al día</translation>
    </message>
    <message>
        <source>Call the emergency number now. Give no more stock.</source>
        <translation>Llame ahora al número de emergencia. No dé más caldo.</translation>
    </message>
    <message>
        <source>Blood in stool or vomit, or black stool</source>
        <translation>Sangre en las heces o en el vómito, o heces negras</translation>
    </message>
    <message>
        <source>Call the treating clinician now, and the emergency number when it is much or the person is pale or faint. Give no more stock.</source>
        <translation>Llame ahora al médico tratante, y al número de emergencia si es mucha sangre o si la persona está pálida o a punto de desmayarse. No dé más caldo.</translation>
    </message>
    <message>
        <source>Weight loss of more than 5 %</source>
        <translation>Pérdida de más del 5 % del peso</translation>
    </message>
    <message>
        <source>Call the treating clinician this week; for a child, today. Give no more stock until then.</source>
        <translation>Llame esta semana al médico tratante; si es un niño, hoy mismo. Hasta entonces, no dé más caldo.</translation>
    </message>
    <message>
        <source>Loose stool</source>
        <translation>Heces sueltas</translation>
    </message>
    <message>
        <source>Constipation</source>
        <translation>Estreñimiento</translation>
    </message>
    <message>
        <source>Bloating or wind</source>
        <translation>Hinchazón del vientre o gases</translation>
    </message>
    <message>
        <source>Belly ache</source>
        <translation>Dolor de vientre</translation>
    </message>
    <message>
        <source>Nausea</source>
        <translation>Náuseas</translation>
    </message>
    <message>
        <source>Heartburn or spitting up</source>
        <translation>Acidez o regurgitación</translation>
    </message>
    <message>
        <source>Headache</source>
        <translation>Dolor de cabeza</translation>
    </message>
    <message>
        <source>Rash or itch in one place</source>
        <translation>Sarpullido o picazón en un solo lugar</translation>
    </message>
    <message>
        <source>Flushed face</source>
        <translation>Cara enrojecida</translation>
    </message>
    <message>
        <source>Runny or blocked nose</source>
        <translation>Nariz que gotea o tapada</translation>
    </message>
    <message>
        <source>Poor sleep</source>
        <translation>Dormir mal</translation>
    </message>
    <message>
        <source>Tiredness</source>
        <translation>Cansancio</translation>
    </message>
    <message>
        <source>Irritable or low mood</source>
        <translation>Mal humor o ánimo bajo</translation>
    </message>
    <message>
        <source>Aching joints or muscles</source>
        <translation>Dolor de articulaciones o músculos</translation>
    </message>
    <message>
        <source>Racing heart</source>
        <translation>Corazón acelerado</translation>
    </message>
</context>
<context>
    <name>UsualVessel</name>
    <message>
        <source>a usual stockpot</source>
        <translation>una olla grande común</translation>
    </message>
</context>
<context>
    <name>WeekAhead</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
</context>
<context>
    <name>WeekFindings</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 runs short by %2 (%3). Cook more before it or on it.</source>
        <translation>Para el %1 hace falta más caldo: %2 (%3). Cocine más ese día o antes.</translation>
    </message>
    <message>
        <source>The amounts hold %1 % for what is spilt or left in the jar.</source>
        <translation>Las cantidades incluyen un %1 % por lo que se derrama o queda en el frasco.</translation>
    </message>
    <message>
        <source>%1 may drink none of the stock of this week (%2). Plan a pot that %1 may have.</source>
        <translation>Esta semana no hay caldo que %1 pueda beber (%2). Prevea una olla que %1 pueda tomar.</translation>
    </message>
    <message>
        <source>Only this may be drunk by %1: %2. The rest (%3) may not.</source>
        <translation>%1 solo puede beber esto: %2. El resto (%3), no.</translation>
    </message>
    <message>
        <source>the meat on hand</source>
        <translation>la carne que hay</translation>
    </message>
    <message>
        <source>%1 of meat of %2 is left after %3, its last good day. Freeze it fresh, or make a pot with less meat.</source>
        <translation>Después del %3, su último día bueno, sobra %1 de carne de %2. Congélela fresca o haga una olla con menos carne.</translation>
    </message>
    <message>
        <source>%1 of %2 is left after %3, its last good day. Freeze it fresh, cook less, or cook it later.</source>
        <translation>Después del %3, su último día bueno, sobra %1 de %2. Congélelo fresco, cocine menos o cocínelo más tarde.</translation>
    </message>
    <message>
        <source>%1 ends with %2 in the refrigerator, which has room for %3. Freeze some or cook less at a time.</source>
        <translation>El %1 termina con %2 en el refrigerador, donde cabe %3. Congele una parte o cocine menos cada vez.</translation>
    </message>
    <message>
        <source>%1 ends with %2 in the freezer, which has room for %3. Use the frozen stock first.</source>
        <translation>El %1 termina con %2 en el congelador, donde cabe %3. Use primero el caldo congelado.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>WhoMay</name>
    <message>
        <source>under six months: nothing but milk; ask the clinician who treats the child</source>
        <translation>menos de seis meses: solo leche; pregunte al médico que atiende al bebé</translation>
    </message>
    <message>
        <source>no %1</source>
        <translation>nada de %1</translation>
    </message>
    <message>
        <source>no %1: %2</source>
        <translation>nada de %1: %2</translation>
    </message>
    <message>
        <source>bone broth waits until a phase is set that allows it</source>
        <translation>el caldo de huesos espera hasta que se fije una fase que lo permita</translation>
    </message>
    <message>
        <source>bone broth waits for a later phase than %1</source>
        <translation>el caldo de huesos espera una fase posterior a %1</translation>
    </message>
    <message>
        <source>from an unsalted pot</source>
        <translation>de una olla sin sal</translation>
    </message>
</context>
</TS>
