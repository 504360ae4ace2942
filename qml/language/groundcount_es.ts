<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>ArithmeticList</name>
    <message>
        <source>Arithmetic</source>
        <translation>Aritmética</translation>
    </message>
</context>
<context>
    <name>AskPane</name>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
</context>
<context>
    <name>Averager</name>
    <message>
        <source>2DRMS from the receiver&apos;s own sigmas</source>
        <translation>2DRMS con las sigmas del propio receptor</translation>
    </message>
    <message>
        <source>2DRMS from the spread of the fixes</source>
        <translation>2DRMS con la dispersión de las posiciones</translation>
    </message>
</context>
<context>
    <name>BackgroundPage</name>
    <message>
        <source>A GeoTIFF, MBTiles or GeoPackage of tiles lies under the map, faded so that marks stay readable. It is read apart from this program, laid into the job&apos;s coordinate system and kept beside the book on this device; nothing of it is sealed.</source>
        <translation>Un GeoTIFF, MBTiles o GeoPackage de teselas queda bajo el mapa, atenuado para que las marcas se lean. Se lee aparte de este programa, se lleva al sistema de coordenadas de la obra y se guarda junto al libro en este dispositivo; nada de él se sella.</translation>
    </message>
    <message>
        <source>A photograph shows the ground of its day, and a metre or more beside where it is. Distances to walls and pipes are taped.</source>
        <translation>Una fotografía muestra el terreno de su día, y a un metro o más de donde está. Las distancias a muros y tuberías se miden con cinta.</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Or its place on this device</source>
        <translation>O su lugar en este dispositivo</translation>
    </message>
    <message>
        <source>Reading the file</source>
        <translation>Se lee el archivo</translation>
    </message>
    <message>
        <source>Read this file</source>
        <translation>Leer este archivo</translation>
    </message>
    <message>
        <source>Background of the map</source>
        <translation>Fondo del mapa</translation>
    </message>
    <message>
        <source>Take it away from this device</source>
        <translation>Quitarlo de este dispositivo</translation>
    </message>
</context>
<context>
    <name>BooksPage</name>
    <message>
        <source>Field books</source>
        <translation>Libretas de campo</translation>
    </message>
    <message>
        <source>One book holds one job. What is typed and not sealed stays in its own book as a draft.</source>
        <translation>Una libreta guarda un trabajo. Lo escrito y no sellado queda en su libreta como borrador.</translation>
    </message>
    <message>
        <source>Open a book that lies elsewhere</source>
        <translation>Abrir una libreta de otro lugar</translation>
    </message>
    <message>
        <source>Open a field book</source>
        <translation>Abrir una libreta de campo</translation>
    </message>
    <message>
        <source>Name of a new book</source>
        <translation>Nombre de una libreta nueva</translation>
    </message>
    <message>
        <source>Begin a new book</source>
        <translation>Comenzar una libreta nueva</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>What you keep is sealed with the test</source>
        <translation>Lo que conserve se sella con el ensayo</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Tomar la foto</translation>
    </message>
    <message>
        <source>The picture is being kept</source>
        <translation>Se está guardando la imagen</translation>
    </message>
    <message>
        <source>The camera is starting</source>
        <translation>La cámara está arrancando</translation>
    </message>
</context>
<context>
    <name>ClearStepPage</name>
    <message>
        <source>Add a hazard</source>
        <translation>Agregar un peligro</translation>
    </message>
</context>
<context>
    <name>CountActs</name>
    <message>
        <source>Start the count</source>
        <translation>Iniciar el conteo</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Enter the reading</source>
        <translation>Ingresar la lectura</translation>
    </message>
</context>
<context>
    <name>CountPlot</name>
    <message>
        <source>%1 sets, %2 not accepted, the newest %3</source>
        <translation>%1 series, %2 no aceptadas, la última %3</translation>
    </message>
</context>
<context>
    <name>CountStepPage</name>
    <message>
        <source>You to the gauge</source>
        <translation>De usted al densímetro</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>You</source>
        <translation>Usted</translation>
    </message>
    <message>
        <source>What is typed</source>
        <translation>Qué se ingresa</translation>
    </message>
</context>
<context>
    <name>CustodyPage</name>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Qué ocurre</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Barriers that hold it</source>
        <translation>Barreras que lo protegen</translation>
    </message>
    <message>
        <source>Barriers</source>
        <translation>Barreras</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Log of the custody, to sign</source>
        <translation>Registro de custodia, para firmar</translation>
    </message>
</context>
<context>
    <name>DayNoJob</name>
    <message>
        <source>Join a job: shared server or bundle file</source>
        <translation>Unirse a un trabajo: servidor compartido o archivo de paquete</translation>
    </message>
    <message>
        <source>Open another field book</source>
        <translation>Abrir otra libreta de campo</translation>
    </message>
</context>
<context>
    <name>DayNotReady</name>
    <message>
        <source>Start all the same, with a reason</source>
        <translation>Iniciar de todos modos, con un motivo</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>Owed here today</source>
        <translation>Pendiente aquí hoy</translation>
    </message>
    <message>
        <source>Nothing owed.</source>
        <translation>Nada pendiente.</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Today&apos;s sheet, to sign</source>
        <translation>Hoja de hoy, para firmar</translation>
    </message>
</context>
<context>
    <name>DigStepPage</name>
    <message>
        <source>Coarse particles</source>
        <translation>Partículas gruesas</translation>
    </message>
    <message>
        <source>Sieve</source>
        <translation>Tamiz</translation>
    </message>
    <message>
        <source>Type the masses</source>
        <translation>Ingresar las masas</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Type the moisture</source>
        <translation>Ingresar la humedad</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Sites</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Off each edge</source>
        <translation>Desde cada borde</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Sorteados</translation>
    </message>
    <message>
        <source>Rejected and drawn again</source>
        <translation>Rechazados y sorteados de nuevo</translation>
    </message>
</context>
<context>
    <name>EntryPane</name>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
</context>
<context>
    <name>EntryRow</name>
    <message>
        <source>not typed yet</source>
        <translation>aún sin ingresar</translation>
    </message>
</context>
<context>
    <name>FigureFold</name>
    <message>
        <source>Fold the arithmetic</source>
        <translation>Plegar el cálculo</translation>
    </message>
    <message>
        <source>Show the arithmetic</source>
        <translation>Mostrar los cálculos</translation>
    </message>
</context>
<context>
    <name>FiguresPage</name>
    <message>
        <source>Statistics</source>
        <translation>Estadística</translation>
    </message>
    <message>
        <source>Plot</source>
        <translation>Gráfico</translation>
    </message>
</context>
<context>
    <name>FilePick</name>
    <message>
        <source>Files that fit (%1)</source>
        <translation>Archivos que sirven (%1)</translation>
    </message>
</context>
<context>
    <name>GaugePapersPage</name>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Name on the job</source>
        <translation>Nombre en la obra</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Sources, as on the certificate</source>
        <translation>Fuentes, según el certificado</translation>
    </message>
    <message>
        <source>Prescale</source>
        <translation>Preescala</translation>
    </message>
    <message>
        <source>Why the gauge&apos;s record changes</source>
        <translation>Por qué cambia el registro del densímetro</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Calibración</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Calibrado el</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Add the curve of a depth</source>
        <translation>Agregar la curva de una profundidad</translation>
    </message>
    <message>
        <source>Water curve</source>
        <translation>Curva de agua</translation>
    </message>
    <message>
        <source>Standard counts that day</source>
        <translation>Conteos estándar de ese día</translation>
    </message>
    <message>
        <source>Hide the files</source>
        <translation>Ocultar los archivos</translation>
    </message>
    <message>
        <source>Read the curves from a CSV file</source>
        <translation>Leer las curvas de un archivo CSV</translation>
    </message>
    <message>
        <source>Or where the file is</source>
        <translation>O dónde está el archivo</translation>
    </message>
    <message>
        <source>Read this file</source>
        <translation>Leer este archivo</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fugas</translation>
    </message>
    <message>
        <source>Tested on</source>
        <translation>Fecha de la prueba</translation>
    </message>
    <message>
        <source>Result of the leak test</source>
        <translation>Resultado de la prueba de fugas</translation>
    </message>
    <message>
        <source>How often a gauge is calibrated and leak-tested is a matter of the licence and of local rules. The manufacturer&apos;s instructions govern.</source>
        <translation>La frecuencia de calibración y de prueba de fugas de un densímetro depende de la licencia y de las reglas locales. Rigen las instrucciones del fabricante.</translation>
    </message>
</context>
<context>
    <name>HandOverPane</name>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Form of the file</source>
        <translation>Formato del archivo</translation>
    </message>
    <message>
        <source>Choose where it goes</source>
        <translation>Elegir dónde guardarlo</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>What will be in it</source>
        <translation>Lo que llevará</translation>
    </message>
    <message>
        <source>A file of that name is replaced only when the new one is whole. The field book stays the evidence.</source>
        <translation>Un archivo con ese nombre se reemplaza solo cuando el nuevo está completo. La libreta de campo sigue siendo la prueba.</translation>
    </message>
    <message>
        <source>Layer of the file</source>
        <translation>Capa de datos del archivo</translation>
    </message>
    <message>
        <source>Names of layers and columns out of</source>
        <translation>Nombres de capas de datos y columnas según</translation>
    </message>
    <message>
        <source>The owner&apos;s own names for layers and columns</source>
        <translation>Los nombres propios del dueño para capas de datos y columnas</translation>
    </message>
    <message>
        <source>Our own names again</source>
        <translation>Volver a nuestros nombres</translation>
    </message>
</context>
<context>
    <name>HazardSection</name>
    <message>
        <source>Take the trench offset</source>
        <translation>Tomar la corrección de zanja</translation>
    </message>
    <message>
        <source>Test all the same, information only, because</source>
        <translation>Ensayar de todos modos, solo informativo, porque</translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message>
        <source>Name of the job</source>
        <translation>Nombre del trabajo</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Dónde está</translation>
    </message>
    <message>
        <source>Coordinate system</source>
        <translation>Sistema de coordenadas</translation>
    </message>
    <message>
        <source>The plans name it. Every place of the book counts in it, so it cannot be changed later.</source>
        <translation>Los planos lo nombran. Todos los lugares de la libreta cuentan en él, por eso no se puede cambiar después.</translation>
    </message>
    <message>
        <source>Rule set, densities in %1</source>
        <translation>Conjunto de reglas, densidades en %1</translation>
    </message>
    <message>
        <source>Take a rule set from a file</source>
        <translation>Tomar un conjunto de reglas de un archivo</translation>
    </message>
    <message>
        <source>Your name, which is sealed with everything you do</source>
        <translation>Su nombre, que se sella con todo lo que hace</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Por qué cambia</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Keypad</source>
        <translation>Teclado</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Borrar</translation>
    </message>
</context>
<context>
    <name>KitForm</name>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>second-hand</source>
        <translation>de segunda mano</translation>
    </message>
    <message>
        <source>own</source>
        <translation>propio</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
</context>
<context>
    <name>KitPage</name>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>The licence, local rules and the manufacturer&apos;s instructions govern.</source>
        <translation>Rigen la licencia, las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Screen: light, text, language</source>
        <translation>Pantalla: luz, texto, idioma</translation>
    </message>
    <message>
        <source>Gauges</source>
        <translation>Densímetros</translation>
    </message>
    <message>
        <source>Add a gauge</source>
        <translation>Agregar un densímetro</translation>
    </message>
    <message>
        <source>Standard counts</source>
        <translation>Conteos estándar</translation>
    </message>
    <message>
        <source>density over moisture</source>
        <translation>densidad sobre humedad</translation>
    </message>
    <message>
        <source>Take standard counts</source>
        <translation>Tomar conteos estándar</translation>
    </message>
    <message>
        <source>Offsets</source>
        <translation>Correcciones</translation>
    </message>
    <message>
        <source>Add an offset</source>
        <translation>Agregar una corrección</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Add a material</source>
        <translation>Agregar un material</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Agregar una persona</translation>
    </message>
    <message>
        <source>Rule set</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Choose a row at the left.</source>
        <translation>Elija una fila a la izquierda.</translation>
    </message>
    <message>
        <source>Site file: lots, lines, walls, pipes of the plans</source>
        <translation>Archivo de obra: lotes, ejes, muros y tuberías de los planos</translation>
    </message>
    <message>
        <source>Background of the map</source>
        <translation>Fondo del mapa</translation>
    </message>
    <message>
        <source>Receiver: where positions come from</source>
        <translation>Receptor: de dónde vienen las posiciones</translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation>Comenzar un trabajo</translation>
    </message>
    <message>
        <source>Add a straight line</source>
        <translation>Agregar una línea recta</translation>
    </message>
    <message>
        <source>Field books: another job</source>
        <translation>Libretas de campo: otro trabajo</translation>
    </message>
</context>
<context>
    <name>KitSheet</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>LiftGrid</name>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Lift %1, %2</source>
        <translation>Capa %1, %2</translation>
    </message>
</context>
<context>
    <name>LiftPage</name>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Thickness, compacted</source>
        <translation>Espesor, compactado</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
    <message>
        <source>Lifts of this lot</source>
        <translation>Capas de este lote</translation>
    </message>
</context>
<context>
    <name>LiftPicker</name>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>Lift above</source>
        <translation>Capa superior</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Lift below</source>
        <translation>Capa inferior</translation>
    </message>
</context>
<context>
    <name>LinePage</name>
    <message>
        <source>Stations count along it. A line with curves or station equations comes in a site file.</source>
        <translation>Las estaciones se cuentan a lo largo de ella. Una línea con curvas o ecuaciones de estación viene en un archivo del sitio.</translation>
    </message>
    <message>
        <source>Lines out of a site file</source>
        <translation>Líneas de un archivo del sitio</translation>
    </message>
    <message>
        <source>Name of the line</source>
        <translation>Nombre de la línea</translation>
    </message>
    <message>
        <source>Begin station</source>
        <translation>Estación inicial</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Comienzo</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
</context>
<context>
    <name>LotDetail</name>
    <message>
        <source>Add a lift</source>
        <translation>Agregar una capa</translation>
    </message>
    <message>
        <source>Open failures</source>
        <translation>Fallas abiertas</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>Estadística</translation>
    </message>
    <message>
        <source>Draw random sites</source>
        <translation>Sortear sitios aleatorios</translation>
    </message>
    <message>
        <source>Ground and requirement of this lot</source>
        <translation>Terreno y requisito de este lote</translation>
    </message>
    <message>
        <source>Sheets to sign</source>
        <translation>Hojas para firmar</translation>
    </message>
    <message>
        <source>Summary of this lot</source>
        <translation>Resumen de este lote</translation>
    </message>
    <message>
        <source>Review of this lot</source>
        <translation>Revisión de este lote</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>By state, person, gauge, material, day</source>
        <translation>Por estado, persona, equipo, material, día</translation>
    </message>
    <message>
        <source>Profile, lift by lift</source>
        <translation>Perfil, capa por capa</translation>
    </message>
</context>
<context>
    <name>LotPage</name>
    <message>
        <source>Add the line that its stations count along</source>
        <translation>Agregar la línea de sus estaciones</translation>
    </message>
    <message>
        <source>Add the material with its reference test</source>
        <translation>Agregar el material con su ensayo de referencia</translation>
    </message>
    <message>
        <source>Name of the lot</source>
        <translation>Nombre del lote</translation>
    </message>
    <message>
        <source>Zone, such as embankment or subgrade</source>
        <translation>Zona, como terraplén o subrasante</translation>
    </message>
    <message>
        <source>Its corners came in a site file and stay as they are.</source>
        <translation>Sus esquinas vinieron en un archivo del sitio y quedan como están.</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>Width from the line</source>
        <translation>Ancho desde la línea</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>Reference test</source>
        <translation>Ensayo de referencia</translation>
    </message>
    <message>
        <source>Percent compaction</source>
        <translation>Compactación en %</translation>
    </message>
    <message>
        <source>Moisture window</source>
        <translation>Rango de humedad</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Lo más seco</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Wettest</source>
        <translation>Lo más húmedo</translation>
    </message>
    <message>
        <source>Tests per lift</source>
        <translation>Ensayos por capa</translation>
    </message>
    <message>
        <source>Sublots</source>
        <translation>Sublotes</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Por qué cambia</translation>
    </message>
    <message>
        <source>The specification of the contract governs; type what it says.</source>
        <translation>Rige la especificación del contrato; escriba lo que dice.</translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>No lots in this book yet.</source>
        <translation>Aún no hay lotes en esta libreta.</translation>
    </message>
    <message>
        <source>Choose a lot at the left.</source>
        <translation>Elija un lote a la izquierda.</translation>
    </message>
    <message>
        <source>Tests of every lot</source>
        <translation>Ensayos de todos los lotes</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Lots out of a site file</source>
        <translation>Lotes de un archivo de obra</translation>
    </message>
    <message>
        <source>Shared server</source>
        <translation>Servidor común</translation>
    </message>
    <message>
        <source>Add a lot</source>
        <translation>Agregar un lote</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Groundcount</source>
        <translation>Groundcount</translation>
    </message>
</context>
<context>
    <name>MapContent</name>
    <message>
        <source>Site %1</source>
        <translation>Sitio %1</translation>
    </message>
    <message>
        <source>gauges %1</source>
        <translation>densímetros %1</translation>
    </message>
    <message>
        <source>vehicles %1</source>
        <translation>vehículos %1</translation>
    </message>
</context>
<context>
    <name>MapCoverageCard</name>
    <message>
        <source>No lot has this lift.</source>
        <translation>Ningún lote tiene esta capa.</translation>
    </message>
    <message>
        <source>Between tests nothing is known; the specification decides how many are enough.</source>
        <translation>Entre ensayos no se sabe nada; la especificación decide cuántos bastan.</translation>
    </message>
    <message>
        <source>Working out the coverage</source>
        <translation>Se está calculando la cobertura</translation>
    </message>
</context>
<context>
    <name>MapDetail</name>
    <message>
        <source>Open the test</source>
        <translation>Abrir el ensayo</translation>
    </message>
    <message>
        <source>Start a test here</source>
        <translation>Iniciar un ensayo aquí</translation>
    </message>
    <message>
        <source>What is sealed</source>
        <translation>Lo que está sellado</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>MapHeldCard</name>
    <message>
        <source>This place</source>
        <translation>Este lugar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Place an obstacle</source>
        <translation>Colocar un obstáculo</translation>
    </message>
    <message>
        <source>Start a test here</source>
        <translation>Iniciar un ensayo aquí</translation>
    </message>
</context>
<context>
    <name>MapLegend</name>
    <message>
        <source>Pass</source>
        <translation>Cumple</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>No cumple</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Owed site</source>
        <translation>Sitio pendiente</translation>
    </message>
    <message>
        <source>Information only</source>
        <translation>Solo informativo</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anulado</translation>
    </message>
    <message>
        <source>Hatched: open failure</source>
        <translation>Rayado: incumplimiento abierto</translation>
    </message>
    <message>
        <source>Dotted: untested</source>
        <translation>Punteado: sin ensayar</translation>
    </message>
    <message>
        <source>Close the legend</source>
        <translation>Cerrar la leyenda</translation>
    </message>
    <message>
        <source>Site file: lots, lines, walls, pipes of the plans</source>
        <translation>Archivo de obra: lotes, ejes, muros y tuberías de los planos</translation>
    </message>
    <message>
        <source>Background of the map</source>
        <translation>Fondo del mapa</translation>
    </message>
</context>
<context>
    <name>MapPage</name>
    <message>
        <source>Nothing to draw yet.</source>
        <translation>Aún no hay nada que dibujar.</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Leyenda</translation>
    </message>
    <message>
        <source>Show where I am</source>
        <translation>Mostrar dónde estoy</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Start a test here</source>
        <translation>Iniciar un ensayo aquí</translation>
    </message>
    <message>
        <source>Open the test</source>
        <translation>Abrir el ensayo</translation>
    </message>
    <message>
        <source>Hide the coverage</source>
        <translation>Ocultar la cobertura</translation>
    </message>
    <message>
        <source>Show the coverage</source>
        <translation>Mostrar la cobertura</translation>
    </message>
</context>
<context>
    <name>MaterialPage</name>
    <message>
        <source>Maximum dry density</source>
        <translation>Densidad seca máxima</translation>
    </message>
    <message>
        <source>Optimum</source>
        <translation>Óptimo</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Peak by</source>
        <translation>Pico por</translation>
    </message>
    <message>
        <source>Peak by hand</source>
        <translation>Pico a mano</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Type the points</source>
        <translation>Escribir los puntos</translation>
    </message>
    <message>
        <source>One more point</source>
        <translation>Un punto más</translation>
    </message>
    <message>
        <source>Gravity of the solids</source>
        <translation>Gravedad de los sólidos</translation>
    </message>
    <message>
        <source>Standard uncertainty of the maximum</source>
        <translation>Incertidumbre estándar del máximo</translation>
    </message>
    <message>
        <source>Coarse particles</source>
        <translation>Partículas gruesas</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>What it is, where from</source>
        <translation>Qué es, de dónde viene</translation>
    </message>
    <message>
        <source>Soil class</source>
        <translation>Clase de suelo</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Number of the test</source>
        <translation>Número del ensayo</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Norma</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Why it is amended</source>
        <translation>Por qué se enmienda</translation>
    </message>
    <message>
        <source>Sheet of this reference test, to sign</source>
        <translation>Hoja de este ensayo de referencia, para firmar</translation>
    </message>
</context>
<context>
    <name>NorthArrow</name>
    <message>
        <source>North arrow</source>
        <translation>Flecha de norte</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
</context>
<context>
    <name>NotYetButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>Aún no es posible</translation>
    </message>
</context>
<context>
    <name>ObstaclePage</name>
    <message>
        <source>Obstacle</source>
        <translation>Obstáculo</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Where, from the test</source>
        <translation>Dónde, desde el ensayo</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Name, if it has one</source>
        <translation>Nombre, si lo tiene</translation>
    </message>
    <message>
        <source>Seal the obstacle</source>
        <translation>Sellar el obstáculo</translation>
    </message>
</context>
<context>
    <name>OffsetPage</name>
    <message>
        <source>What it corrects</source>
        <translation>Qué corrige</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Evidencia</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Una más</translation>
    </message>
    <message>
        <source>How it is applied</source>
        <translation>Cómo se aplica</translation>
    </message>
    <message>
        <source>Where it holds</source>
        <translation>Dónde vale</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation>Tomada el</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Depth of the tests</source>
        <translation>Profundidad de los ensayos</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
</context>
<context>
    <name>PageBack</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Página entera</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Open to print</source>
        <translation>Abrir para imprimir</translation>
    </message>
</context>
<context>
    <name>PersonPage</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Certificate, as printed</source>
        <translation>Certificado, como está impreso</translation>
    </message>
    <message>
        <source>Certificate ends</source>
        <translation>El certificado vence</translation>
    </message>
    <message>
        <source>Why it changes</source>
        <translation>Por qué cambia</translation>
    </message>
    <message>
        <source>Who may use a gauge is a matter of the licence and of training; a certificate here is a note, not a permission.</source>
        <translation>Quién puede usar un densímetro depende de la licencia y de la capacitación; aquí un certificado es una nota, no un permiso.</translation>
    </message>
    <message>
        <source>Tests for</source>
        <translation>Ensaya para</translation>
    </message>
    <message>
        <source>At work with this device: what is sealed bears this name.</source>
        <translation>Trabaja con este dispositivo: lo que se sella lleva este nombre.</translation>
    </message>
    <message>
        <source>I am at work with this device</source>
        <translation>Yo trabajo con este dispositivo</translation>
    </message>
</context>
<context>
    <name>PlaceStepPage</name>
    <message>
        <source>Fixes round their mean, north up</source>
        <translation>Posiciones fijas en torno a su media, norte arriba</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Posición fija</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Distancia al eje</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Con cinta</translation>
    </message>
    <message>
        <source>Place it by tape</source>
        <translation>Ubicar con cinta</translation>
    </message>
    <message>
        <source>Receiver</source>
        <translation>Receptor</translation>
    </message>
    <message>
        <source>The lot with its tests</source>
        <translation>El lote con sus ensayos</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Why this test is made</source>
        <translation>Por qué se hace este ensayo</translation>
    </message>
    <message>
        <source>What was reworked</source>
        <translation>Qué se retrabajó</translation>
    </message>
    <message>
        <source>%1. Go on all the same, because</source>
        <translation>%1. Seguir de todos modos, porque</translation>
    </message>
    <message>
        <source>Choose a receiver</source>
        <translation>Elegir un receptor</translation>
    </message>
    <message>
        <source>Line that the tape was laid along</source>
        <translation>Línea a lo largo de la que se tendió la cinta</translation>
    </message>
</context>
<context>
    <name>ProfilePage</name>
    <message>
        <source>Profile</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>This lot has neither stations nor corners, so it has no profile.</source>
        <translation>Este lote no tiene estaciones ni esquinas, por lo que no tiene perfil.</translation>
    </message>
</context>
<context>
    <name>PublishPane</name>
    <message>
        <source>Publish the layers</source>
        <translation>Publicar las capas de datos</translation>
    </message>
    <message>
        <source>The layers of this job as tables of a PostGIS database. Each time all rows are made again from the sealed records; a reader sees the old state or the new one, never a part.</source>
        <translation>Las capas de datos de esta obra como tablas de una base PostGIS. Cada vez se rehacen todas las filas a partir de los registros sellados; quien lee ve el estado anterior o el nuevo, nunca una parte.</translation>
    </message>
    <message>
        <source>Address of the database</source>
        <translation>Dirección de la base de datos</translation>
    </message>
    <message>
        <source>Schema: lower-case letters, digits and _</source>
        <translation>Esquema: minúsculas, cifras y _</translation>
    </message>
    <message>
        <source>Role that may read the tables, or nothing</source>
        <translation>Rol que puede leer las tablas, o nada</translation>
    </message>
    <message>
        <source>Publish now</source>
        <translation>Publicar ahora</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>The login needs the right to make schemas. A password belongs in the password file of this device, never in the address.</source>
        <translation>El usuario necesita el derecho de crear esquemas. La contraseña va en el archivo de contraseñas de este aparato, nunca en la dirección.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>%1 %2 is outside the calibrated range, %3 to %4.</source>
        <translation>%1 %2 está fuera del rango calibrado, %3 a %4.</translation>
    </message>
    <message>
        <source>Are the two numbers the wrong way round?</source>
        <translation>¿Están invertidos los dos números?</translation>
    </message>
    <message>
        <source>Moisture </source>
        <translation>Humedad </translation>
    </message>
    <message>
        <source>%1 %2 apart, %3 allowed</source>
        <translation>%1 %2 de diferencia, %3 permitido</translation>
    </message>
</context>
<context>
    <name>ReceiverPage</name>
    <message>
        <source>Receiver</source>
        <translation>Receptor</translation>
    </message>
    <message>
        <source>The place of a test is the mean of many positions. A surveying receiver sends NMEA 0183 sentences over the local network or a serial line; a phone&apos;s own receiver knows its place to some paces only.</source>
        <translation>El lugar de un ensayo es la media de muchas posiciones. Un receptor topográfico envía sentencias NMEA 0183 por la red local o por una línea serie; el receptor propio de un teléfono conoce su lugar solo a unos pasos.</translation>
    </message>
    <message>
        <source>Speed, bits a second</source>
        <translation>Velocidad, bits por segundo</translation>
    </message>
    <message>
        <source>Use this</source>
        <translation>Usar este</translation>
    </message>
</context>
<context>
    <name>RecordPage</name>
    <message>
        <source>Notes and photos</source>
        <translation>Notas y fotos</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Seal the note</source>
        <translation>Sellar la nota</translation>
    </message>
    <message>
        <source>Attach a photo</source>
        <translation>Adjuntar una foto</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Sellada</translation>
    </message>
    <message>
        <source>Void this test</source>
        <translation>Anular este ensayo</translation>
    </message>
    <message>
        <source>Sheet of this test, to sign</source>
        <translation>Hoja de este ensayo, para firmar</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message>
        <source>signed out</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>in transit</source>
        <translation>en tránsito</translation>
    </message>
    <message>
        <source>at site</source>
        <translation>en obra</translation>
    </message>
    <message>
        <source>signed in</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>trench</source>
        <translation>zanja</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>técnico</translation>
    </message>
    <message>
        <source>engineer</source>
        <translation>ingeniero</translation>
    </message>
    <message>
        <source>no leak</source>
        <translation>sin fuga</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>muestra</translation>
    </message>
    <message>
        <source>oven</source>
        <translation>horno</translation>
    </message>
    <message>
        <source>density low</source>
        <translation>densidad baja</translation>
    </message>
    <message>
        <source>density high</source>
        <translation>densidad alta</translation>
    </message>
    <message>
        <source>too dry</source>
        <translation>demasiado seco</translation>
    </message>
    <message>
        <source>too wet</source>
        <translation>demasiado húmedo</translation>
    </message>
    <message>
        <source>waits for the check sample</source>
        <translation>espera la muestra de control</translation>
    </message>
    <message>
        <source>waits for the oven</source>
        <translation>espera el horno</translation>
    </message>
    <message>
        <source>a check was overridden</source>
        <translation>se omitió una comprobación</translation>
    </message>
    <message>
        <source>wet density outside the calibrated range</source>
        <translation>densidad húmeda fuera del rango calibrado</translation>
    </message>
    <message>
        <source>water density outside the calibrated range</source>
        <translation>densidad de agua fuera del rango calibrado</translation>
    </message>
    <message>
        <source>trench offset is large</source>
        <translation>la corrección de zanja es grande</translation>
    </message>
    <message>
        <source>single</source>
        <translation>simple</translation>
    </message>
    <message>
        <source>differential</source>
        <translation>diferencial</translation>
    </message>
    <message>
        <source>precise positioning</source>
        <translation>posicionamiento preciso</translation>
    </message>
    <message>
        <source>RTK fixed</source>
        <translation>RTK fijo</translation>
    </message>
    <message>
        <source>RTK float</source>
        <translation>RTK flotante</translation>
    </message>
    <message>
        <source>phone</source>
        <translation>teléfono</translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Lot and lifts</source>
        <translation>Lote y capas</translation>
    </message>
    <message>
        <source>Open failures</source>
        <translation>Fallas abiertas</translation>
    </message>
    <message>
        <source>Owed</source>
        <translation>Pendientes</translation>
    </message>
    <message>
        <source>Since the last review</source>
        <translation>Desde la última revisión</translation>
    </message>
    <message>
        <source>Unusual</source>
        <translation>Inusual</translation>
    </message>
    <message>
        <source>The word</source>
        <translation>La palabra</translation>
    </message>
    <message>
        <source>Reviewer</source>
        <translation>Revisor</translation>
    </message>
    <message>
        <source>Reason, for a return or an exception</source>
        <translation>Motivo, para devolver o exceptuar</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>With exception</source>
        <translation>Con excepción</translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation>Aceptar: %1</translation>
    </message>
</context>
<context>
    <name>RulesPage</name>
    <message>
        <source>The copy differs in</source>
        <translation>La copia difiere en</translation>
    </message>
    <message>
        <source>Name of the copy</source>
        <translation>Nombre de la copia</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Source of what differs</source>
        <translation>Fuente de lo que difiere</translation>
    </message>
    <message>
        <source>How good the source is</source>
        <translation>Qué tan buena es la fuente</translation>
    </message>
    <message>
        <source>Throw the copy away</source>
        <translation>Descartar la copia</translation>
    </message>
    <message>
        <source>Limits, with their source</source>
        <translation>Límites, con su fuente</translation>
    </message>
    <message>
        <source>Choices, with their source</source>
        <translation>Opciones, con su fuente</translation>
    </message>
</context>
<context>
    <name>ScreenPage</name>
    <message>
        <source>Screen</source>
        <translation>Pantalla</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>End of a count</source>
        <translation>Fin de un conteo</translation>
    </message>
</context>
<context>
    <name>SeatStepPage</name>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Rocking</source>
        <translation>Balanceo</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Depth of the test</source>
        <translation>Profundidad del ensayo</translation>
    </message>
    <message>
        <source>Hole depth</source>
        <translation>Profundidad del agujero</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
</context>
<context>
    <name>ServerPane</name>
    <message>
        <source>Shared server</source>
        <translation>Servidor común</translation>
    </message>
    <message>
        <source>Devices of one job send each other what is sealed. Everything that comes is verified before it is taken. Without a server a bundle file does the same.</source>
        <translation>Los aparatos de una obra se envían lo sellado. Todo lo que llega se verifica antes de tomarlo. Sin servidor, un archivo de paquete hace lo mismo.</translation>
    </message>
    <message>
        <source>Address of the server, as its administrator gave it</source>
        <translation>Dirección del servidor, tal como la dio su administrador</translation>
    </message>
    <message>
        <source>When to exchange</source>
        <translation>Cuándo intercambiar</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Intercambiar ahora</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Not taken</source>
        <translation>No tomado</translation>
    </message>
    <message>
        <source>Id of this job, for a device that joins</source>
        <translation>Identificador de esta obra, para un aparato que se une</translation>
    </message>
    <message>
        <source>A password belongs in the password file of this device, never in the address. Stopping loses nothing.</source>
        <translation>La contraseña va en el archivo de contraseñas de este aparato, nunca en la dirección. Al detenerlo no se pierde nada.</translation>
    </message>
    <message>
        <source>This book is empty: it can become this device&apos;s copy of a job.</source>
        <translation>Esta libreta está vacía: puede ser la copia de una obra en este aparato.</translation>
    </message>
    <message>
        <source>Show the jobs on the server</source>
        <translation>Mostrar las obras del servidor</translation>
    </message>
    <message>
        <source>Join a job</source>
        <translation>Unirse a una obra</translation>
    </message>
    <message>
        <source>Take in a bundle file</source>
        <translation>Tomar un archivo de paquete</translation>
    </message>
    <message>
        <source>Publish the layers in PostGIS</source>
        <translation>Publicar las capas de datos en PostGIS</translation>
    </message>
</context>
<context>
    <name>Shell</name>
    <message>
        <source>The tests of this book are being read. Its map can be used meanwhile.</source>
        <translation>Se están leyendo los ensayos de este libro. Mientras tanto se puede usar su mapa.</translation>
    </message>
</context>
<context>
    <name>SideRail</name>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
</context>
<context>
    <name>SiteFileNeeds</name>
    <message>
        <source>Reference test of the lots</source>
        <translation>Ensayo de referencia de los lotes</translation>
    </message>
    <message>
        <source>Tests per lift</source>
        <translation>Ensayos por capa</translation>
    </message>
    <message>
        <source>Begin station</source>
        <translation>Estación inicial</translation>
    </message>
</context>
<context>
    <name>SiteFilePage</name>
    <message>
        <source>Alignments, lot areas, walls, pipes and structures out of GeoPackage, Shapefile, GeoJSON, KML, DXF or LandXML. The file is read apart from this program and stays as it is.</source>
        <translation>Ejes, áreas de lotes, muros, tuberías y estructuras de GeoPackage, Shapefile, GeoJSON, KML, DXF o LandXML. El archivo se lee aparte de este programa y queda como está.</translation>
    </message>
    <message>
        <source>A line on a plan shows where somebody drew it. Call before digging.</source>
        <translation>Una línea en un plano muestra dónde la dibujó alguien. Llame antes de excavar.</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Or its place on this device</source>
        <translation>O su lugar en este dispositivo</translation>
    </message>
    <message>
        <source>Reading the file</source>
        <translation>Se lee el archivo</translation>
    </message>
    <message>
        <source>Read this file</source>
        <translation>Leer este archivo</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Niveles</translation>
    </message>
    <message>
        <source>What is %1?</source>
        <translation>¿Qué es %1?</translation>
    </message>
    <message>
        <source>Kind of the layer</source>
        <translation>Clase del nivel</translation>
    </message>
</context>
<context>
    <name>SiteFilePreview</name>
    <message>
        <source>On the map</source>
        <translation>En el mapa</translation>
    </message>
    <message>
        <source>The file over the job&apos;s line and lots</source>
        <translation>El archivo sobre el eje y los lotes de la obra</translation>
    </message>
</context>
<context>
    <name>SiteFileQuestions</name>
    <message>
        <source>The file does not say</source>
        <translation>El archivo no lo dice</translation>
    </message>
    <message>
        <source>Unit of the coordinates</source>
        <translation>Unidad de las coordenadas</translation>
    </message>
</context>
<context>
    <name>SiteFileSheet</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 mi</source>
        <translation>%1 mi</translation>
    </message>
</context>
<context>
    <name>StabilityPage</name>
    <message>
        <source>Gauge on its block, untouched from the first count to the last. Single one-minute counts, not averages.</source>
        <translation>Densímetro sobre su bloque, sin tocarlo del primer conteo al último. Conteos individuales de un minuto, no promedios.</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Conteos</translation>
    </message>
    <message>
        <source>Type the counts</source>
        <translation>Escribir los conteos</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
</context>
<context>
    <name>StandardCountsPage</name>
    <message>
        <source>Take another set</source>
        <translation>Tomar otra serie</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Before you count</source>
        <translation>Antes de contar</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Conteos</translation>
    </message>
    <message>
        <source>How counted</source>
        <translation>Cómo se contó</translation>
    </message>
    <message>
        <source>One more count</source>
        <translation>Un conteo más</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Stability test</source>
        <translation>Ensayo de estabilidad</translation>
    </message>
    <message>
        <source>To use the gauge all the same: who agreed, and why</source>
        <translation>Para usar el densímetro de todos modos: quién lo aceptó y por qué</translation>
    </message>
    <message>
        <source>Limits, with their source</source>
        <translation>Límites, con su fuente</translation>
    </message>
    <message>
        <source>Log of the standard counts, to sign</source>
        <translation>Registro de conteos estándar, para firmar</translation>
    </message>
</context>
<context>
    <name>StepHead</name>
    <message>
        <source>Steps of the test</source>
        <translation>Pasos del ensayo</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellada</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>por hacer</translation>
    </message>
</context>
<context>
    <name>SystemRows</name>
    <message>
        <source>No coordinate system has all of the words &quot;%1&quot; in its code, name or place.</source>
        <translation>Ningún sistema de coordenadas tiene todas las palabras «%1» en su código, nombre o lugar.</translation>
    </message>
</context>
<context>
    <name>SystemSearch</name>
    <message>
        <source>Coordinate system</source>
        <translation>Sistema de coordenadas</translation>
    </message>
    <message>
        <source>Find it by code, name or place</source>
        <translation>Buscarlo por código, nombre o lugar</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
</context>
<context>
    <name>TestPage</name>
    <message>
        <source>Count</source>
        <translation>Conteo</translation>
    </message>
    <message>
        <source>Amend this step</source>
        <translation>Enmendar este paso</translation>
    </message>
    <message>
        <source>Record, notes, photos</source>
        <translation>Registro, notas, fotos</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo así</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>TestsPage</name>
    <message>
        <source>Tests</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todos</translation>
    </message>
    <message>
        <source>No test is like that.</source>
        <translation>Ningún ensayo es así.</translation>
    </message>
</context>
<context>
    <name>VerdictStepPage</name>
    <message>
        <source>Percent compaction</source>
        <translation>Compactación en %</translation>
    </message>
    <message>
        <source>Percent compaction against its limit</source>
        <translation>Porcentaje de compactación y su límite</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Moisture against its window</source>
        <translation>Humedad y su rango</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Húmeda %1</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Seca %1</translation>
    </message>
    <message>
        <source>Max. %1</source>
        <translation>Máx. %1</translation>
    </message>
    <message>
        <source>Hide the arithmetic</source>
        <translation>Ocultar los cálculos</translation>
    </message>
    <message>
        <source>Show the arithmetic</source>
        <translation>Mostrar los cálculos</translation>
    </message>
    <message>
        <source>What to do next</source>
        <translation>Qué hacer ahora</translation>
    </message>
</context>
<context>
    <name>groundcount::paper</name>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Registro %1</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>groundcount::paper::Words</name>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Lt</source>
        <translation>Izq</translation>
    </message>
    <message>
        <source>Rt</source>
        <translation>Der</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>provisional</source>
        <translation>provisional</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>FAIL</source>
        <translation>NO CUMPLE</translation>
    </message>
    <message>
        <source>information only</source>
        <translation>solo informativo</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>random</source>
        <translation>aleatorio</translation>
    </message>
    <message>
        <source>directed</source>
        <translation>dirigido</translation>
    </message>
    <message>
        <source>retest</source>
        <translation>reensayo</translation>
    </message>
    <message>
        <source>A verdict says whether a figure meets the job&apos;s specification. The gauge&apos;s licence, local rules and the manufacturer&apos;s instructions govern its use; a licensed professional decides about the work.</source>
        <translation>Un veredicto dice si una cifra cumple la especificación de la obra. La licencia del densímetro, las normas locales y las instrucciones del fabricante rigen su uso; un profesional con licencia decide sobre la obra.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Lot, lift</source>
        <translation>Lote, capa</translation>
    </message>
    <message>
        <source>Station, offset</source>
        <translation>Estación, desplazamiento</translation>
    </message>
    <message>
        <source>Wet %1</source>
        <translation>Húmeda %1</translation>
    </message>
    <message>
        <source>Water %1</source>
        <translation>Agua %1</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Seca %1</translation>
    </message>
    <message>
        <source>Moisture %</source>
        <translation>Humedad %</translation>
    </message>
    <message>
        <source>Max. %1</source>
        <translation>Máx. %1</translation>
    </message>
    <message>
        <source>Compaction %</source>
        <translation>Compactación %</translation>
    </message>
    <message>
        <source>Needed %</source>
        <translation>Requerido %</translation>
    </message>
    <message>
        <source>Window %</source>
        <translation>Rango %</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>No test.</source>
        <translation>Ningún ensayo.</translation>
    </message>
    <message>
        <source>overridden: %1</source>
        <translation>excepción: %1</translation>
    </message>
    <message>
        <source>reworked: %1</source>
        <translation>retrabajo: %1</translation>
    </message>
    <message>
        <source>waits for the %1</source>
        <translation>en espera de: %1</translation>
    </message>
    <message>
        <source>two amendments are in conflict</source>
        <translation>dos enmiendas están en conflicto</translation>
    </message>
    <message>
        <source>Density tests of the day</source>
        <translation>Ensayos de densidad del día</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>Pass / fail</source>
        <translation>Cumple / no cumple</translation>
    </message>
    <message>
        <source>Provisional / information only / void</source>
        <translation>Provisional / solo informativo / anulado</translation>
    </message>
    <message>
        <source>Gauges</source>
        <translation>Densímetros</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Standard count taken</source>
        <translation>Conteo estándar tomado</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Off the mean %</source>
        <translation>Desvío de la media %</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Calibration until</source>
        <translation>Calibración hasta</translation>
    </message>
    <message>
        <source>Leak test until</source>
        <translation>Prueba de fugas hasta</translation>
    </message>
    <message>
        <source>No gauge.</source>
        <translation>Ningún densímetro.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>No remark.</source>
        <translation>Ninguna observación.</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Project engineer</source>
        <translation>Ingeniero del proyecto</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Calibración</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, hasta %2</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fugas</translation>
    </message>
    <message>
        <source>%1, %2, until %3</source>
        <translation>%1, %2, hasta %3</translation>
    </message>
    <message>
        <source>Moisture counts; strokes: mean of the sets before</source>
        <translation>Conteos de humedad; rayas: media de las series anteriores</translation>
    </message>
    <message>
        <source>Density counts; strokes: mean of the sets before</source>
        <translation>Conteos de densidad; rayas: media de las series anteriores</translation>
    </message>
    <message>
        <source>Standard counts</source>
        <translation>Conteos estándar</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomado</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Mean before</source>
        <translation>Media anterior</translation>
    </message>
    <message>
        <source>Off %</source>
        <translation>Dif. %</translation>
    </message>
    <message>
        <source>No standard count.</source>
        <translation>Ningún conteo estándar.</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Gauge custody</source>
        <translation>Custodia del densímetro</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Barriers</source>
        <translation>Barreras</translation>
    </message>
    <message>
        <source>Badge worn</source>
        <translation>Dosímetro puesto</translation>
    </message>
    <message>
        <source>Papers in reach</source>
        <translation>Papeles al alcance</translation>
    </message>
    <message>
        <source>No custody record.</source>
        <translation>Ningún registro de custodia.</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Never leave a gauge unattended. Two independent barriers whenever it is not under direct watch. If it is lost, stolen or struck: keep people back, do not move it, call the radiation safety officer.</source>
        <translation>Nunca deje un densímetro sin vigilancia. Dos barreras independientes siempre que no esté a la vista. Si se pierde, lo roban o lo golpean: aleje a la gente, no lo mueva, llame al responsable de seguridad radiológica.</translation>
    </message>
    <message>
        <source>Radiation safety officer</source>
        <translation>Responsable de seguridad radiológica</translation>
    </message>
    <message>
        <source>Random tests needed, made</source>
        <translation>Ensayos aleatorios requeridos, hechos</translation>
    </message>
    <message>
        <source>Mean compaction %</source>
        <translation>Compactación media %</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Desviación estándar</translation>
    </message>
    <message>
        <source>Percent within limits</source>
        <translation>Porcentaje dentro de límites</translation>
    </message>
    <message>
        <source>Do not enter</source>
        <translation>No entran</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>al menos %1 %</translation>
    </message>
    <message>
        <source>at most %1 %</source>
        <translation>como máximo %1 %</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>Compaction</source>
        <translation>Compactación</translation>
    </message>
    <message>
        <source>Moisture window</source>
        <translation>Rango de humedad</translation>
    </message>
    <message>
        <source>Tests needed in a lift</source>
        <translation>Ensayos necesarios por capa</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Tests made</source>
        <translation>Ensayos hechos</translation>
    </message>
    <message>
        <source>Drawn sites owed</source>
        <translation>Sitios sorteados pendientes</translation>
    </message>
    <message>
        <source>Failures not yet passed again</source>
        <translation>Fallas aún sin reensayo aprobado</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>Water content %; dry density %1</source>
        <translation>Contenido de agua %; densidad seca %1</translation>
    </message>
    <message>
        <source>Reference test %1</source>
        <translation>Ensayo de referencia %1</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Norma</translation>
    </message>
    <message>
        <source>Maximum dry density %1</source>
        <translation>Densidad seca máxima %1</translation>
    </message>
    <message>
        <source>Optimum %</source>
        <translation>Óptimo %</translation>
    </message>
    <message>
        <source>Peak by</source>
        <translation>Pico por</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertidumbre estándar</translation>
    </message>
    <message>
        <source>Gravity of coarse particles</source>
        <translation>Gravedad de partículas gruesas</translation>
    </message>
    <message>
        <source>Water of coarse particles %</source>
        <translation>Agua de partículas gruesas %</translation>
    </message>
    <message>
        <source>Points and curve</source>
        <translation>Puntos y curva</translation>
    </message>
    <message>
        <source>Curve through the points without overshoot; cross: the peak that tests are judged against. No gravity of the solids is sealed, so no zero-air-voids line is drawn.</source>
        <translation>Curva por los puntos sin sobrepasarlos; cruz: el pico con que se juzgan los ensayos. No hay gravedad de los sólidos sellada, por eso no se traza la línea de cero vacíos de aire.</translation>
    </message>
    <message>
        <source>Curve through the points without overshoot; cross: the peak that tests are judged against; broken line: zero air voids.</source>
        <translation>Curva por los puntos sin sobrepasarlos; cruz: el pico con que se juzgan los ensayos; línea discontinua: cero vacíos de aire.</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Water content %</source>
        <translation>Contenido de agua %</translation>
    </message>
    <message>
        <source>Dry density %1</source>
        <translation>Densidad seca %1</translation>
    </message>
    <message>
        <source>No points are sealed: the peak was entered by hand.</source>
        <translation>No hay puntos sellados: el pico se anotó a mano.</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Laboratorio</translation>
    </message>
    <message>
        <source>Hazard</source>
        <translation>Peligro</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Requerido</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Hallado</translation>
    </message>
    <message>
        <source>Unsure by</source>
        <translation>Incierto en</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Sabido por</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Remedy or override</source>
        <translation>Remedio o excepción</translation>
    </message>
    <message>
        <source>OVERRIDDEN: %1</source>
        <translation>EXCEPCIÓN: %1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Mode, depth in.</source>
        <translation>Modo, prof. in.</translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation>Orientación</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>Segundos</translation>
    </message>
    <message>
        <source>Density count</source>
        <translation>Conteo de densidad</translation>
    </message>
    <message>
        <source>Moisture count</source>
        <translation>Conteo de humedad</translation>
    </message>
    <message>
        <source>Wet density</source>
        <translation>Densidad húmeda</translation>
    </message>
    <message>
        <source>Water density</source>
        <translation>Densidad de agua</translation>
    </message>
    <message>
        <source>No reading.</source>
        <translation>Ninguna lectura.</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Distancias libres</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Hole depth in.</source>
        <translation>Prof. del hoyo in.</translation>
    </message>
    <message>
        <source>Test depth in.</source>
        <translation>Prof. del ensayo in.</translation>
    </message>
    <message>
        <source>Lift thickness in.</source>
        <translation>Espesor de capa in.</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Retained on %1</source>
        <translation>Retenido en %1</translation>
    </message>
    <message>
        <source>Over 3 in.</source>
        <translation>Más de 3 in.</translation>
    </message>
    <message>
        <source>Other moisture %</source>
        <translation>Otra humedad %</translation>
    </message>
    <message>
        <source>%1 %2 (%3 %4)</source>
        <translation>%1 %2 (%3 %4)</translation>
    </message>
    <message>
        <source>Verdict: %1</source>
        <translation>Veredicto: %1</translation>
    </message>
    <message>
        <source>Percent compaction</source>
        <translation>Compactación en %</translation>
    </message>
    <message>
        <source>Dry density</source>
        <translation>Densidad seca</translation>
    </message>
    <message>
        <source>Maximum, corrected</source>
        <translation>Máximo, corregido</translation>
    </message>
    <message>
        <source>Coarse particles %</source>
        <translation>Partículas gruesas %</translation>
    </message>
    <message>
        <source>Reasons: %1.</source>
        <translation>Motivos: %1.</translation>
    </message>
    <message>
        <source>Overridden: %1. This test is for information only.</source>
        <translation>Excepción: %1. Este ensayo es solo informativo.</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Fórmula</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Números</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Arithmetic</source>
        <translation>Aritmética</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Sellada</translation>
    </message>
    <message>
        <source>Why changed</source>
        <translation>Motivo del cambio</translation>
    </message>
    <message>
        <source>Record hash</source>
        <translation>Hash del registro</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Density test %1</source>
        <translation>Ensayo de densidad %1</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> de %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Offset ft</source>
        <translation>Desplaz. ft</translation>
    </message>
    <message>
        <source>Grid N, E (%1)</source>
        <translation>Cuadrícula N, E (%1)</translation>
    </message>
    <message>
        <source>Position by</source>
        <translation>Posición por</translation>
    </message>
    <message>
        <source>, %1 fixes</source>
        <translation>, %1 posiciones</translation>
    </message>
    <message>
        <source>Reference test</source>
        <translation>Ensayo de referencia</translation>
    </message>
    <message>
        <source>Gauge, serial</source>
        <translation>Densímetro, serie</translation>
    </message>
    <message>
        <source>Reworked before this test: %1.</source>
        <translation>Retrabajado antes de este ensayo: %1.</translation>
    </message>
    <message>
        <source>VOID: %1.</source>
        <translation>ANULADO: %1.</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>requerido</translation>
    </message>
    <message>
        <source>control limit</source>
        <translation>límite de control</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>test %1</source>
        <translation>ensayo %1</translation>
    </message>
    <message>
        <source>Compaction in order, %1, %2</source>
        <translation>Compactación en orden, %1, %2</translation>
    </message>
    <message>
        <source>nothing tested</source>
        <translation>nada ensayado</translation>
    </message>
    <message>
        <source>under way</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>failure open</source>
        <translation>falla abierta</translation>
    </message>
    <message>
        <source>ready for review</source>
        <translation>listo para revisar</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>accepted with exception</source>
        <translation>aceptado con excepción</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>changed since accepted</source>
        <translation>cambiado desde la aceptación</translation>
    </message>
    <message>
        <source>a person not in this book</source>
        <translation>una persona que no está en este libro</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Situación</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hechos</translation>
    </message>
    <message>
        <source>Not finished</source>
        <translation>Sin terminar</translation>
    </message>
    <message>
        <source>Open failures</source>
        <translation>Fallas abiertas</translation>
    </message>
    <message>
        <source>Amended apart</source>
        <translation>Enmendados por separado</translation>
    </message>
    <message>
        <source>Whole lot</source>
        <translation>Lote entero</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Distancia al eje</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>No failure is open.</source>
        <translation>No hay fallas abiertas.</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Palabra</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>No review is sealed.</source>
        <translation>No hay ninguna revisión sellada.</translation>
    </message>
    <message>
        <source>Test %1</source>
        <translation>Ensayo %1</translation>
    </message>
    <message>
        <source>Nothing came since.</source>
        <translation>No llegó nada desde entonces.</translation>
    </message>
    <message>
        <source>Review of lot %1</source>
        <translation>Revisión del lote %1</translation>
    </message>
    <message>
        <source>Reviews</source>
        <translation>Revisiones</translation>
    </message>
    <message>
        <source>Since the review</source>
        <translation>Desde la revisión</translation>
    </message>
    <message>
        <source>A review speaks of what the reviewer&apos;s book held when it was sealed. It decides about the lot; it changes no test.</source>
        <translation>Una revisión habla de lo que tenía el libro del revisor cuando se selló. Decide sobre el lote; no cambia ningún ensayo.</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>by its corners</source>
        <translation>por sus esquinas</translation>
    </message>
</context>
<context>
    <name>groundcount::position::NmeaSource</name>
    <message>
        <source>The receiver marks its position as void.</source>
        <translation>El receptor marca su posición como no válida.</translation>
    </message>
    <message>
        <source>The receiver has no fix.</source>
        <translation>El receptor no tiene posición.</translation>
    </message>
</context>
<context>
    <name>groundcount::position::PositionSource</name>
    <message>
        <source>No position for %1 s.</source>
        <translation>Sin posición desde hace %1 s.</translation>
    </message>
    <message>
        <source>The receiver at %1 hung up.</source>
        <translation>El receptor en %1 cortó la conexión.</translation>
    </message>
    <message>
        <source>The receiver at %1 cannot be reached: %2.</source>
        <translation>No se alcanza el receptor en %1: %2.</translation>
    </message>
    <message>
        <source>The receiver at %1 was unplugged.</source>
        <translation>El receptor en %1 fue desconectado.</translation>
    </message>
    <message>
        <source>The line to the receiver was closed.</source>
        <translation>Se cerró la línea con el receptor.</translation>
    </message>
    <message>
        <source>The line to the receiver is gone.</source>
        <translation>La línea con el receptor ya no existe.</translation>
    </message>
    <message>
        <source>The app may not use this device&apos;s position. Allow it in the device&apos;s settings.</source>
        <translation>La aplicación no puede usar la posición de este dispositivo. Permítalo en los ajustes del dispositivo.</translation>
    </message>
    <message>
        <source>This device&apos;s receiver gives no position.</source>
        <translation>El receptor de este dispositivo no da posición.</translation>
    </message>
    <message>
        <source>This device gives the app no position: it is not allowed, or there is no receiver. See the device&apos;s settings.</source>
        <translation>Este dispositivo no da posición a la aplicación: no está permitido o no hay receptor. Vea los ajustes del dispositivo.</translation>
    </message>
    <message>
        <source>This device gives a position of %1 and its clock says %2: a position that old is not used.</source>
        <translation>Este dispositivo da una posición de %1 y su reloj marca %2: una posición tan antigua no se usa.</translation>
    </message>
</context>
<context>
    <name>groundcount::view</name>
    <message>
        <source>Zero air voids</source>
        <translation>Cero vacíos de aire</translation>
    </message>
    <message>
        <source>gravity %1</source>
        <translation>gravedad %1</translation>
    </message>
    <message>
        <source>Dry density, %1</source>
        <translation>Densidad seca, %1</translation>
    </message>
    <message>
        <source>Moisture, % of dry mass</source>
        <translation>Humedad, % de masa seca</translation>
    </message>
    <message>
        <source>%1 points, peak %2 at %3 %</source>
        <translation>%1 puntos, pico %2 a %3 %</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Cumple</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>No cumple</translation>
    </message>
    <message>
        <source>Information only</source>
        <translation>Solo informativo</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anulado</translation>
    </message>
    <message>
        <source>provisional</source>
        <translation>provisional</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Lot %1, lift %2</source>
        <translation>Lote %1, capa %2</translation>
    </message>
</context>
<context>
    <name>groundcount::view::BackgroundSheet</name>
    <message>
        <source>A background needs a book whose job has a coordinate system.</source>
        <translation>Un fondo necesita un libro cuya obra tenga un sistema de coordenadas.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 lies under the map: %2 x %3 pixels of %4.</source>
        <translation>%1 está bajo el mapa: %2 x %3 píxeles de %4.</translation>
    </message>
    <message>
        <source>The file is finer than a background can be; cut out the site for more.</source>
        <translation>El archivo es más fino de lo que un fondo puede ser; recorte la obra para tener más detalle.</translation>
    </message>
    <message>
        <source>The background at %1 cannot be taken away.</source>
        <translation>No se puede quitar el fondo en %1.</translation>
    </message>
    <message>
        <source>Background of the map</source>
        <translation>Fondo del mapa</translation>
    </message>
    <message>
        <source>Extent</source>
        <translation>Extensión</translation>
    </message>
    <message>
        <source>north %1 to %2, east %3 to %4</source>
        <translation>norte %1 a %2, este %3 a %4</translation>
    </message>
    <message>
        <source>On this device</source>
        <translation>En este dispositivo</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>A background belongs to this device and is never sealed.</source>
        <translation>Un fondo es de este dispositivo y nunca se sella.</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Visible</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Oculto</translation>
    </message>
</context>
<context>
    <name>groundcount::view::BookShelf</name>
    <message>
        <source>%1, %2 MB</source>
        <translation>%1, %2 MB</translation>
    </message>
    <message>
        <source>open now</source>
        <translation>abierta ahora</translation>
    </message>
    <message>
        <source>The name of a book has 1 to %1 letters; this one has %2.</source>
        <translation>El nombre de una libreta tiene de 1 a %1 letras; este tiene %2.</translation>
    </message>
    <message>
        <source>The name of a book begins with a letter or a digit and goes on with letters, digits, blanks, - and _; it is &quot;%1&quot;.</source>
        <translation>El nombre de una libreta comienza con una letra o cifra y sigue con letras, cifras, espacios, - y _; es &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>There is a field book %1 already.</source>
        <translation>Ya hay una libreta de campo %1.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::ClearStep</name>
    <message>
        <source>Seal the clearances</source>
        <translation>Sellar las distancias</translation>
    </message>
    <message>
        <source>moved: %1 too close</source>
        <translation>movido: %1 demasiado cerca</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Con cinta</translation>
    </message>
    <message>
        <source>Use the tape</source>
        <translation>Usar la cinta</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Type the distance</source>
        <translation>Ingresar la distancia</translation>
    </message>
    <message>
        <source>from test %1</source>
        <translation>desde el ensayo %1</translation>
    </message>
    <message>
        <source>All four settled</source>
        <translation>Los cuatro resueltos</translation>
    </message>
    <message>
        <source>%1 of 4 to settle</source>
        <translation>%1 de 4 por resolver</translation>
    </message>
    <message>
        <source>Rules: %1</source>
        <translation>Reglas: %1</translation>
    </message>
    <message>
        <source>Seal: settle 1 hazard first</source>
        <translation>Sellar: resolver antes 1 peligro</translation>
    </message>
    <message>
        <source>Seal: settle %1 hazards first</source>
        <translation>Sellar: resolver antes %1 peligros</translation>
    </message>
</context>
<context>
    <name>groundcount::view::CountStep</name>
    <message>
        <source>Type reading %1</source>
        <translation>Anotar lectura %1</translation>
    </message>
    <message>
        <source>Keep people and vehicles out.</source>
        <translation>Mantenga fuera a personas y vehículos.</translation>
    </message>
    <message>
        <source>If the gauge is struck</source>
        <translation>Si golpean el densímetro</translation>
    </message>
    <message>
        <source>Seal the reading</source>
        <translation>Sellar la lectura</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>Reading %1: %2 %3, moisture %4 %5</source>
        <translation>Lectura %1: %2 %3, humedad %4 %5</translation>
    </message>
    <message>
        <source>another spot</source>
        <translation>otro punto</translation>
    </message>
    <message>
        <source>use the mean</source>
        <translation>usar la media</translation>
    </message>
    <message>
        <source>Second, 90°</source>
        <translation>Segunda, 90°</translation>
    </message>
    <message>
        <source>Second, 180°</source>
        <translation>Segunda, 180°</translation>
    </message>
    <message>
        <source>No second reading</source>
        <translation>Sin segunda lectura</translation>
    </message>
    <message>
        <source>Count again</source>
        <translation>Contar de nuevo</translation>
    </message>
    <message>
        <source>A new spot</source>
        <translation>Un punto nuevo</translation>
    </message>
    <message>
        <source>second reading %1; a new spot is tested instead</source>
        <translation>segunda lectura %1; en su lugar se ensaya un punto nuevo</translation>
    </message>
    <message>
        <source>Seal: seat the gauge first</source>
        <translation>Sellar: asentar antes el densímetro</translation>
    </message>
    <message>
        <source>Seal: the count runs</source>
        <translation>Sellar: conteo en curso</translation>
    </message>
    <message>
        <source>Seal: take the second reading</source>
        <translation>Sellar: tomar la segunda lectura</translation>
    </message>
    <message>
        <source>Seal: count first</source>
        <translation>Sellar: contar antes</translation>
    </message>
    <message>
        <source>Seal: type both numbers</source>
        <translation>Sellar: ingresar ambos números</translation>
    </message>
    <message>
        <source>Seal: the numbers do not fit</source>
        <translation>Sellar: los números no concuerdan</translation>
    </message>
    <message>
        <source>Seal: a trench correction needs counts</source>
        <translation>Sellar: la corrección de zanja requiere conteos</translation>
    </message>
    <message>
        <source>Seal: the readings are apart</source>
        <translation>Sellar: las lecturas difieren</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Conteos</translation>
    </message>
    <message>
        <source>Readout</source>
        <translation>Lectura directa</translation>
    </message>
    <message>
        <source>Readout, %</source>
        <translation>Lectura directa, %</translation>
    </message>
    <message>
        <source>First aid first. Call for help.</source>
        <translation>Primero los primeros auxilios. Pida ayuda.</translation>
    </message>
    <message>
        <source>Keep people back and secure the area.</source>
        <translation>Aleje a las personas y asegure el área.</translation>
    </message>
    <message>
        <source>Do not move the gauge. Hold the equipment and its operator.</source>
        <translation>No mueva el densímetro. Retenga la máquina y a su operador.</translation>
    </message>
    <message>
        <source>Call the radiation safety officer.</source>
        <translation>Llame al responsable de seguridad radiológica.</translation>
    </message>
    <message>
        <source>Nobody leaves before a survey says so.</source>
        <translation>Nadie se va hasta que una medición de radiación lo permita.</translation>
    </message>
    <message>
        <source>The licence and local rules govern.</source>
        <translation>Rigen la licencia y las normas locales.</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lectura %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Wet density</source>
        <translation>Densidad húmeda</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Type both numbers</source>
        <translation>Ingresar ambos números</translation>
    </message>
    <message>
        <source>Test %1 with this gauge and material: %2 and %3</source>
        <translation>Ensayo %1 con este densímetro y material: %2 y %3</translation>
    </message>
    <message>
        <source>along the line</source>
        <translation>a lo largo de la línea</translation>
    </message>
    <message>
        <source>turned 90°</source>
        <translation>girado 90°</translation>
    </message>
    <message>
        <source>turned 180°</source>
        <translation>girado 180°</translation>
    </message>
    <message>
        <source>direct, %1 in.</source>
        <translation>transmisión directa, %1 in.</translation>
    </message>
    <message>
        <source>backscatter</source>
        <translation>retrodispersión</translation>
    </message>
    <message>
        <source>Left of the minimum</source>
        <translation>Resta del mínimo</translation>
    </message>
    <message>
        <source>The minimum is over</source>
        <translation>El mínimo ya pasó</translation>
    </message>
    <message>
        <source>Enter the reading in %1</source>
        <translation>Ingresar la lectura en %1</translation>
    </message>
    <message>
        <source>Ring: %1, from the rule set. The licence and the radiation safety officer govern.</source>
        <translation>Anillo: %1, según las reglas. Rigen la licencia y el responsable de seguridad radiológica.</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Outside the ring</source>
        <translation>Fuera del anillo</translation>
    </message>
    <message>
        <source>Inside the ring</source>
        <translation>Dentro del anillo</translation>
    </message>
</context>
<context>
    <name>groundcount::view::CoverageWords</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>Lot %1: %2 % passed, %3 % failed</source>
        <translation>Lote %1: %2 % aprobado, %3 % fallido</translation>
    </message>
    <message>
        <source> round %1</source>
        <translation> en torno a %1</translation>
    </message>
    <message>
        <source>largest untested patch %1%2</source>
        <translation>mayor zona sin ensayar %1%2</translation>
    </message>
    <message>
        <source>untested</source>
        <translation>sin ensayar</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>untested %1</source>
        <translation>sin ensayar %1</translation>
    </message>
</context>
<context>
    <name>groundcount::view::CustodySheet</name>
    <message>
        <source>Sign out</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>In transit</source>
        <translation>En tránsito</translation>
    </message>
    <message>
        <source>At site</source>
        <translation>En obra</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Una</translation>
    </message>
    <message>
        <source>Two or more</source>
        <translation>Dos o más</translation>
    </message>
    <message>
        <source>Under control and constant surveillance, or behind at least two independent barriers. Gauges hit by equipment had been left unattended.</source>
        <translation>Bajo control y vigilancia constante, o tras al menos dos barreras independientes. Los densímetros golpeados por maquinaria habían quedado sin vigilancia.</translation>
    </message>
    <message>
        <source>The licence, local rules and the manufacturer&apos;s instructions govern.</source>
        <translation>Rigen la licencia, las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>No custody record yet</source>
        <translation>Aún sin registro de custodia</translation>
    </message>
    <message>
        <source>Custody</source>
        <translation>Custodia</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>serie %1</translation>
    </message>
    <message>
        <source>Badge worn</source>
        <translation>Dosímetro puesto</translation>
    </message>
    <message>
        <source>Your own dosimeter</source>
        <translation>Su propio dosímetro</translation>
    </message>
    <message>
        <source>Papers in reach</source>
        <translation>Papeles al alcance</translation>
    </message>
    <message>
        <source>Transport papers, count log, calibration, leak test</source>
        <translation>Papeles de transporte, registro de conteos, calibración, prueba de fugas</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Fewer than two barriers: keep it under your own eyes, or add one before you leave it.</source>
        <translation>Menos de dos barreras: no lo pierda de vista, o agregue una antes de dejarlo.</translation>
    </message>
    <message>
        <source>No badge worn. Sealed so, it stays visible.</source>
        <translation>Sin dosímetro puesto. Si se sella así, queda visible.</translation>
    </message>
    <message>
        <source>On the road the transport papers belong within the driver&apos;s reach.</source>
        <translation>En ruta, los papeles de transporte van al alcance del conductor.</translation>
    </message>
    <message>
        <source>Seal: %1</source>
        <translation>Sellar: %1</translation>
    </message>
    <message>
        <source>Seal: the book has no gauge yet</source>
        <translation>Sellar: la libreta aún no tiene densímetro</translation>
    </message>
    <message>
        <source>Seal: say what happens</source>
        <translation>Sellar: indicar qué ocurre</translation>
    </message>
    <message>
        <source>Seal: say where</source>
        <translation>Sellar: indicar dónde</translation>
    </message>
    <message>
        <source>Seal: count the barriers</source>
        <translation>Sellar: contar las barreras</translation>
    </message>
</context>
<context>
    <name>groundcount::view::DayView</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>mean %1 %2</source>
        <translation>media %1 %2</translation>
    </message>
    <message>
        <source>No gauge</source>
        <translation>Sin densímetro</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Not ready</source>
        <translation>No listo</translation>
    </message>
    <message>
        <source>Start a test here</source>
        <translation>Iniciar un ensayo aquí</translation>
    </message>
    <message>
        <source>Start a test: this book is read-only</source>
        <translation>Iniciar un ensayo: libreta de solo lectura</translation>
    </message>
    <message>
        <source>Start a test: needs a job</source>
        <translation>Iniciar un ensayo: falta un trabajo</translation>
    </message>
    <message>
        <source>Start a test: %1</source>
        <translation>Iniciar un ensayo: %1</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Standard counts accepted %1.</source>
        <translation>Conteos estándar aceptados %1.</translation>
    </message>
    <message>
        <source>Standard counts not accepted, %1.</source>
        <translation>Conteos estándar no aceptados, %1.</translation>
    </message>
    <message>
        <source>Papers in date.</source>
        <translation>Papeles vigentes.</translation>
    </message>
    <message>
        <source>Custody: %1, %2.</source>
        <translation>Custodia: %1, %2.</translation>
    </message>
    <message>
        <source>Add a gauge</source>
        <translation>Agregar un densímetro</translation>
    </message>
    <message>
        <source>Sign the gauge out</source>
        <translation>Retirar el densímetro</translation>
    </message>
    <message>
        <source>Open the gauge&apos;s papers</source>
        <translation>Abrir los papeles del densímetro</translation>
    </message>
    <message>
        <source>Take standard counts</source>
        <translation>Tomar conteos estándar</translation>
    </message>
    <message>
        <source>Site %1, lot %2, lift %3</source>
        <translation>Sitio %1, lote %2, capa %3</translation>
    </message>
    <message>
        <source>open since %1</source>
        <translation>abierto desde %1</translation>
    </message>
    <message>
        <source>for the %1 since %2</source>
        <translation>por %1 desde %2</translation>
    </message>
    <message>
        <source>amended: seal its verdict again</source>
        <translation>enmendado: sellar de nuevo su dictamen</translation>
    </message>
    <message>
        <source>dddd, MMMM d</source>
        <translation>dddd, d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>This field book holds no job yet. Begin one here, or join the job of a crew.</source>
        <translation>Esta libreta de campo aún no tiene un trabajo. Comience uno aquí o únase al trabajo de una cuadrilla.</translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation>Comenzar un trabajo</translation>
    </message>
</context>
<context>
    <name>groundcount::view::DigStep</name>
    <message>
        <source>No coarse</source>
        <translation>Sin gruesos</translation>
    </message>
    <message>
        <source>Weigh it</source>
        <translation>Pesarla</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>No. 4</source>
        <translation>No. 4</translation>
    </message>
    <message>
        <source>3/4 in.</source>
        <translation>3/4 in.</translation>
    </message>
    <message>
        <source>Gauge&apos;s</source>
        <translation>Del densímetro</translation>
    </message>
    <message>
        <source>Other, now</source>
        <translation>Otra, ahora</translation>
    </message>
    <message>
        <source>Other, later</source>
        <translation>Otra, después</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Carbide</source>
        <translation>Carburo</translation>
    </message>
    <message>
        <source>Microwave</source>
        <translation>Microondas</translation>
    </message>
    <message>
        <source>Seal the sample</source>
        <translation>Sellar la muestra</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Use the masses</source>
        <translation>Usar las masas</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Retained</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Over 3 in.</source>
        <translation>Más de 3 in.</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Use this value</source>
        <translation>Usar este valor</translation>
    </message>
    <message>
        <source>Type the moisture</source>
        <translation>Ingresar la humedad</translation>
    </message>
    <message>
        <source>Type both masses</source>
        <translation>Ingresar ambas masas</translation>
    </message>
    <message>
        <source>Check sample of at least %1 g</source>
        <translation>Muestra de control de al menos %1 g</translation>
    </message>
    <message>
        <source>%1 g, retained %2 g</source>
        <translation>%1 g, retenido %2 g</translation>
    </message>
    <message>
        <source>Not weighed yet</source>
        <translation>Aún sin pesar</translation>
    </message>
    <message>
        <source>, over 3 in. %1 g</source>
        <translation>, más de 3 in. %1 g</translation>
    </message>
    <message>
        <source>%1 g is less than the %2 g that the rules ask for.</source>
        <translation>%1 g es menos que los %2 g que piden las reglas.</translation>
    </message>
    <message>
        <source>Retained %1 g is more than the whole sample of %2 g. Are the two the wrong way round?</source>
        <translation>El retenido de %1 g supera la muestra total de %2 g. ¿Están invertidos?</translation>
    </message>
    <message>
        <source>The sample&apos;s mass must be above 0 g; it is %1 g.</source>
        <translation>La masa de la muestra debe ser mayor que 0 g; es %1 g.</translation>
    </message>
    <message>
        <source>Waits for the sample: the verdict is provisional.</source>
        <translation>Espera la muestra: el veredicto es provisional.</translation>
    </message>
    <message>
        <source>Waits for the moisture: the verdict is provisional.</source>
        <translation>Espera la humedad: el veredicto es provisional.</translation>
    </message>
    <message>
        <source>Seal: say what the sample shows</source>
        <translation>Sellar: indicar qué revela la muestra</translation>
    </message>
    <message>
        <source>Seal: the rules ask for a weighed sample</source>
        <translation>Sellar: las reglas piden una muestra pesada</translation>
    </message>
    <message>
        <source>Seal: choose the sieve</source>
        <translation>Sellar: elegir el tamiz</translation>
    </message>
    <message>
        <source>Seal: type the masses</source>
        <translation>Sellar: ingresar las masas</translation>
    </message>
    <message>
        <source>Seal: the masses do not fit</source>
        <translation>Sellar: las masas no concuerdan</translation>
    </message>
    <message>
        <source>Seal: type the moisture</source>
        <translation>Sellar: ingresar la humedad</translation>
    </message>
</context>
<context>
    <name>groundcount::view::DrawSheet</name>
    <message>
        <source>Sites</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>as many in each sublot</source>
        <translation>igual número en cada sublote</translation>
    </message>
    <message>
        <source>Draw these</source>
        <translation>Sortear estos</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>along both edges nothing is tested</source>
        <translation>a lo largo de ambos bordes no se ensaya</translation>
    </message>
    <message>
        <source>Keep this off</source>
        <translation>Mantener esta distancia</translation>
    </message>
    <message>
        <source>From each edge</source>
        <translation>Desde cada borde</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>whole number; the same seed gives the same sites</source>
        <translation>número entero; la misma semilla da los mismos sitios</translation>
    </message>
    <message>
        <source>Use this seed</source>
        <translation>Usar esta semilla</translation>
    </message>
    <message>
        <source>Sites are drawn for a lift; this lot has none.</source>
        <translation>Los sitios se sortean para una capa; este lote no tiene ninguna.</translation>
    </message>
    <message>
        <source>The number of sites is %1; it must be a whole number from 1 to 1000.</source>
        <translation>El número de sitios es %1; debe ser un número entero de 1 a 1000.</translation>
    </message>
    <message>
        <source>The strip along the edge is %1; it must be a number of feet from 0.</source>
        <translation>La franja del borde es %1; debe ser un número de pies desde 0.</translation>
    </message>
    <message>
        <source>The seed is &quot;%1&quot;; it must be a whole number.</source>
        <translation>La semilla es &quot;%1&quot;; debe ser un número entero.</translation>
    </message>
    <message>
        <source>Site %1</source>
        <translation>Sitio %1</translation>
    </message>
    <message>
        <source>random %1 along, %2 across</source>
        <translation>aleatorio %1 a lo largo, %2 a lo ancho</translation>
    </message>
    <message>
        <source>Random sites</source>
        <translation>Sitios aleatorios</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>sealed by %1</source>
        <translation>lo sella %1</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message numerus="yes">
        <source>%n site(s) of this lift are drawn already.</source>
        <translation>
            <numerusform>Ya se sorteó %n sitio de esta capa.</numerusform>
            <numerusform>Ya se sortearon %n sitios de esta capa.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Seal %n site(s)</source>
        <translation>
            <numerusform>Sellar %n sitio</numerusform>
            <numerusform>Sellar %n sitios</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::ExchangeView</name>
    <message>
        <source>Exchange: no book is open</source>
        <translation>Intercambio: no hay ningún libro abierto</translation>
    </message>
    <message>
        <source>Exchange: this book can only be read</source>
        <translation>Intercambio: este libro solo se puede leer</translation>
    </message>
    <message>
        <source>Exchange: type the server&apos;s address</source>
        <translation>Intercambio: escriba la dirección del servidor</translation>
    </message>
    <message>
        <source>Exchange: the address cannot be used</source>
        <translation>Intercambio: la dirección no se puede usar</translation>
    </message>
    <message>
        <source>Stopping</source>
        <translation>Deteniendo</translation>
    </message>
    <message>
        <source>Sending: %1 looked at</source>
        <translation>Enviando: %1 vistos</translation>
    </message>
    <message>
        <source>Taking: %1 read</source>
        <translation>Tomando: %1 leídos</translation>
    </message>
    <message>
        <source>Reaching the server</source>
        <translation>Llegando al servidor</translation>
    </message>
    <message>
        <source>%1 sent, %2 records and %3 photos or notes taken</source>
        <translation>%1 enviados, %2 registros y %3 fotos o notas tomados</translation>
    </message>
    <message>
        <source>Stopped at %1: %2. The next exchange goes on from there.</source>
        <translation>Detenido a las %1: %2. El próximo intercambio sigue desde ahí.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1, %2. {1:?}</translation>
    </message>
    <message>
        <source>When I ask</source>
        <translation>Cuando lo pida</translation>
    </message>
    <message>
        <source>Every 10 minutes</source>
        <translation>Cada 10 minutos</translation>
    </message>
    <message>
        <source>nothing sent yet</source>
        <translation>todavía nada enviado</translation>
    </message>
    <message>
        <source>%1 records and photos, the newest of %2</source>
        <translation>%1 registros y fotos, lo último del %2</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Detenido.</translation>
    </message>
    <message>
        <source>The server shows this login no job; its administrator admits logins.</source>
        <translation>El servidor no muestra ninguna obra a este usuario; su administrador admite usuarios.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::FiguresView</name>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n result(s) in order</source>
        <translation>
            <numerusform>%1: %n resultado en orden</numerusform>
            <numerusform>%1: %n resultados en orden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outside the control limits</source>
        <translation>
            <numerusform>%n fuera de los límites de control</numerusform>
            <numerusform>%n fuera de los límites de control</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n result(s) enter</source>
        <translation>
            <numerusform>Entra %n resultado</numerusform>
            <numerusform>Entran %n resultados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out</source>
        <translation>
            <numerusform>%n queda fuera</numerusform>
            <numerusform>%n quedan fuera</numerusform>
        </translation>
    </message>
    <message>
        <source>Mean compaction</source>
        <translation>Compactación media</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Desviación estándar</translation>
    </message>
    <message>
        <source>with n − 1</source>
        <translation>con n − 1</translation>
    </message>
    <message>
        <source>Percent within limits</source>
        <translation>Porcentaje dentro de límites</translation>
    </message>
    <message>
        <source>by the rule set&apos;s rounding chain</source>
        <translation>según el redondeo del conjunto de reglas</translation>
    </message>
    <message>
        <source>Moving mean of %1</source>
        <translation>Media móvil de %1</translation>
    </message>
    <message>
        <source>fewer than %1 results</source>
        <translation>menos de %1 resultados</translation>
    </message>
    <message>
        <source>the last one</source>
        <translation>la última</translation>
    </message>
    <message>
        <source>Outlier</source>
        <translation>Valor atípico</translation>
    </message>
    <message>
        <source>Outlier: test %1</source>
        <translation>Valor atípico: ensayo %1</translation>
    </message>
    <message>
        <source>No outlier</source>
        <translation>Sin valor atípico</translation>
    </message>
    <message>
        <source>flagged, never dropped by itself</source>
        <translation>señalado, nunca descartado por sí solo</translation>
    </message>
    <message>
        <source>test %1 lies farthest out</source>
        <translation>el ensayo %1 es el más alejado</translation>
    </message>
    <message>
        <source>Control chart</source>
        <translation>Carta de control</translation>
    </message>
    <message>
        <source>none outside</source>
        <translation>ninguno fuera</translation>
    </message>
    <message>
        <source>outside: %1</source>
        <translation>fuera: %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>del %1</translation>
    </message>
    <message>
        <source>Compaction</source>
        <translation>Compactación</translation>
    </message>
    <message>
        <source>Moisture less optimum</source>
        <translation>Humedad menos óptimo</translation>
    </message>
    <message>
        <source>moving mean, %1 at first</source>
        <translation>media móvil, %1 al principio</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Contractor against agency</source>
        <translation>Contratista frente a organismo</translation>
    </message>
    <message>
        <source>Only one side has random tests here.</source>
        <translation>Aquí solo una parte tiene ensayos aleatorios.</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 frente a %2</translation>
    </message>
    <message>
        <source>Gauge against gauge</source>
        <translation>Equipo frente a equipo</translation>
    </message>
    <message>
        <source>Only one gauge has random tests here.</source>
        <translation>Aquí solo un equipo tiene ensayos aleatorios.</translation>
    </message>
    <message>
        <source>%1 and %2 results</source>
        <translation>%1 y %2 resultados</translation>
    </message>
    <message>
        <source>spread differs</source>
        <translation>la dispersión difiere</translation>
    </message>
    <message>
        <source>no difference in spread shown</source>
        <translation>no se muestra diferencia de dispersión</translation>
    </message>
    <message>
        <source>means differ</source>
        <translation>las medias difieren</translation>
    </message>
    <message>
        <source>no difference of means shown</source>
        <translation>no se muestra diferencia de medias</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) differ</source>
        <translation>
            <numerusform>%n par difiere</numerusform>
            <numerusform>%n pares difieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) show no difference</source>
        <translation>
            <numerusform>%n par no muestra diferencia</numerusform>
            <numerusform>%n pares no muestran diferencia</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::GaugePapers</name>
    <message>
        <source>No leak</source>
        <translation>Sin fuga</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>Prescale</source>
        <translation>Preescala</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Calibrado el</translation>
    </message>
    <message>
        <source>Calibration ends</source>
        <translation>Fin de la calibración</translation>
    </message>
    <message>
        <source>Leak tested on</source>
        <translation>Prueba de fugas del</translation>
    </message>
    <message>
        <source>Leak test ends</source>
        <translation>Prueba de fugas vence</translation>
    </message>
    <message>
        <source>Density curve</source>
        <translation>Curva de densidad</translation>
    </message>
    <message>
        <source>Use this curve</source>
        <translation>Usar esta curva</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>C is +</source>
        <translation>C es +</translation>
    </message>
    <message>
        <source>C is %1</source>
        <translation>C es %1</translation>
    </message>
    <message>
        <source>Water curve</source>
        <translation>Curva de agua</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>E is +</source>
        <translation>E es +</translation>
    </message>
    <message>
        <source>E is %1</source>
        <translation>E es %1</translation>
    </message>
    <message>
        <source>Standard counts</source>
        <translation>Conteos estándar</translation>
    </message>
    <message>
        <source>Use these counts</source>
        <translation>Usar estos conteos</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>True counts per count that the gauge shows</source>
        <translation>Conteos reales por conteo que muestra el densímetro</translation>
    </message>
    <message>
        <source>Count ratio = E + slope × water density</source>
        <translation>Razón de conteos = E + pendiente × densidad de agua</translation>
    </message>
    <message>
        <source>Count ratio = A exp(−B × wet density) − C</source>
        <translation>Razón de conteos = A exp(−B × densidad húmeda) − C</translation>
    </message>
    <message>
        <source>Type depth, A, B and C</source>
        <translation>Escriba profundidad, A, B y C</translation>
    </message>
    <message>
        <source>No CSV file in Documents, Downloads or beside the book. Type where it is.</source>
        <translation>No hay archivo CSV en Documentos, Descargas ni junto a la libreta. Escriba dónde está.</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>No se puede leer %1.</translation>
    </message>
    <message>
        <source>%1 depths and the water curve read from %2. Check each against the certificate.</source>
        <translation>%1 profundidades y la curva de agua leídas de %2. Compare cada una con el certificado.</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>New gauge</source>
        <translation>Densímetro nuevo</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>serie %1</translation>
    </message>
    <message>
        <source>E %1, slope %2</source>
        <translation>E %1, pendiente %2</translation>
    </message>
    <message>
        <source>Depth not typed</source>
        <translation>Profundidad sin escribir</translation>
    </message>
    <message>
        <source>%1 in.</source>
        <translation>%1 in.</translation>
    </message>
    <message>
        <source>A %1, B %2, C %3</source>
        <translation>A %1, B %2, C %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Seal: curve %1 is not whole</source>
        <translation>Sellar: la curva %1 está incompleta</translation>
    </message>
    <message>
        <source>the calibration ended %1</source>
        <translation>la calibración venció el %1</translation>
    </message>
    <message>
        <source>the leak test ended %1</source>
        <translation>la prueba de fugas venció el %1</translation>
    </message>
    <message>
        <source>the leak test found a leak: the gauge stays out of service, call the radiation safety officer</source>
        <translation>la prueba halló una fuga: el densímetro queda fuera de servicio, llame al responsable de seguridad radiológica</translation>
    </message>
    <message>
        <source>Not to be used: %1.</source>
        <translation>No se debe usar: %1.</translation>
    </message>
    <message>
        <source>Seal what changed</source>
        <translation>Sellar los cambios</translation>
    </message>
    <message>
        <source>Seal the gauge</source>
        <translation>Sellar el densímetro</translation>
    </message>
    <message>
        <source>Seal: type name and serial</source>
        <translation>Sellar: escriba nombre y serie</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nada ha cambiado</translation>
    </message>
    <message>
        <source>Seal: say why the gauge&apos;s record changes</source>
        <translation>Sellar: diga por qué cambia el registro del densímetro</translation>
    </message>
    <message>
        <source>Seal: the calibration needs its date</source>
        <translation>Sellar: falta la fecha de la calibración</translation>
    </message>
    <message>
        <source>Seal: the calibration needs a curve</source>
        <translation>Sellar: falta una curva de la calibración</translation>
    </message>
    <message>
        <source>Seal: the calibration needs its water curve</source>
        <translation>Sellar: falta la curva de agua de la calibración</translation>
    </message>
    <message>
        <source>Seal: the leak test needs date and result</source>
        <translation>Sellar: faltan fecha y resultado de la prueba de fugas</translation>
    </message>
</context>
<context>
    <name>groundcount::view::HandOverForm</name>
    <message>
        <source>Tests</source>
        <translation>Ensayos</translation>
    </message>
    <message>
        <source>place, figures, verdict and who made it</source>
        <translation>lugar, cifras, veredicto y quién lo hizo</translation>
    </message>
    <message>
        <source>Drawn sites</source>
        <translation>Sitios sorteados</translation>
    </message>
    <message>
        <source>tested and owed</source>
        <translation>ensayados y pendientes</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>the ground that each test stands for</source>
        <translation>el terreno que representa cada ensayo</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>requirement and how far they are</source>
        <translation>requisito y cuánto llevan</translation>
    </message>
    <message>
        <source>Obstacles</source>
        <translation>Obstáculos</translation>
    </message>
    <message>
        <source>Walls and pipes</source>
        <translation>Muros y tubos</translation>
    </message>
    <message>
        <source>obstacles that have a line</source>
        <translation>obstáculos que tienen una línea</translation>
    </message>
    <message>
        <source>Alignments</source>
        <translation>Ejes</translation>
    </message>
    <message>
        <source>lines that stations count along</source>
        <translation>líneas a lo largo de las cuales se cuentan las estaciones</translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation>Paquete</translation>
    </message>
    <message>
        <source>Everything in one file, in the job&apos;s coordinate system. A desktop GIS opens it with the symbols of this map.</source>
        <translation>Todo en un archivo, en el sistema de coordenadas del trabajo. Un SIG de escritorio lo abre con los símbolos de este mapa.</translation>
    </message>
    <message>
        <source>One layer, as longitude and latitude on WGS 84. Between NAD 83 and WGS 84 lie one to two metres on the ground.</source>
        <translation>Una capa de datos, como longitud y latitud en WGS 84. Entre NAD 83 y WGS 84 hay de uno a dos metros en el terreno.</translation>
    </message>
    <message>
        <source>One layer, as a table; places in the job&apos;s coordinate system.</source>
        <translation>Una capa de datos, como tabla; los lugares en el sistema de coordenadas de la obra.</translation>
    </message>
    <message>
        <source>A new folder with a Shapefile for each layer, in the job&apos;s coordinate system. Names end at 10 characters and texts at 254 bytes; a GeoPackage has them whole.</source>
        <translation>Una carpeta nueva con un Shapefile por capa de datos, en el sistema de coordenadas de la obra. Los nombres terminan a los 10 caracteres y los textos a los 254 bytes; un GeoPackage los tiene enteros.</translation>
    </message>
    <message>
        <source>Every sealed record and photo, for another device of this job, which takes it in under Shared server. No server is needed.</source>
        <translation>Todos los registros sellados y las fotos, para otro aparato de esta obra, que lo toma en Servidor común. No hace falta ningún servidor.</translation>
    </message>
    <message>
        <source>Sealed records</source>
        <translation>Registros sellados</translation>
    </message>
    <message>
        <source>as they were sealed, with photos and notes</source>
        <translation>tal como se sellaron, con fotos y notas</translation>
    </message>
    <message>
        <source>Photos, symbols, rule sets</source>
        <translation>Fotos, símbolos, juegos de reglas</translation>
    </message>
    <message>
        <source>and the hashes that tie the file to this book</source>
        <translation>y las huellas que atan el archivo a esta libreta</translation>
    </message>
    <message>
        <source>what tests keep clear of</source>
        <translation>de lo que los ensayos se apartan</translation>
    </message>
</context>
<context>
    <name>groundcount::view::HandOverView</name>
    <message>
        <source>Hand over: no book is open</source>
        <translation>Entregar: no hay ninguna libreta abierta</translation>
    </message>
    <message>
        <source>Hand over: the job needs a coordinate system</source>
        <translation>Entregar: el trabajo necesita un sistema de coordenadas</translation>
    </message>
    <message>
        <source>Reading the book</source>
        <translation>Leyendo la libreta</translation>
    </message>
    <message>
        <source>%1 is written and was read again: %2 rows.</source>
        <translation>%1 está escrito y se leyó de nuevo: %2 filas.</translation>
    </message>
    <message>
        <source>Stopping</source>
        <translation>Deteniendo</translation>
    </message>
    <message>
        <source>Writing: %1 rows</source>
        <translation>Escribiendo: %1 filas</translation>
    </message>
    <message>
        <source>Hand over: this book has no record yet</source>
        <translation>Entregar: esta libreta todavía no tiene registros</translation>
    </message>
    <message>
        <source>The file %1 cannot be read.</source>
        <translation>El archivo %1 no se puede leer.</translation>
    </message>
    <message>
        <source>A file with the owner&apos;s names has at most %1 bytes; %2 has %3.</source>
        <translation>Un archivo con los nombres del dueño tiene como máximo %1 bytes; %2 tiene %3.</translation>
    </message>
    <message>
        <source>%1 is written: %2 records, %3 photos or notes.</source>
        <translation>%1 está escrito: %2 registros, %3 fotos o notas.</translation>
    </message>
    <message>
        <source>%1 layers.</source>
        <translation>%1 capas de datos.</translation>
    </message>
    <message>
        <source>%1 photos.</source>
        <translation>%1 fotos.</translation>
    </message>
    <message>
        <source>%1 texts were cut at the 254 bytes of the format; a GeoPackage has them whole.</source>
        <translation>%1 textos se cortaron a los 254 bytes del formato; un GeoPackage los tiene enteros.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::HazardCard</name>
    <message>
        <source>Vertical face</source>
        <translation>Cara vertical</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Vehicles</source>
        <translation>Vehículos</translation>
    </message>
    <message>
        <source>Other gauges</source>
        <translation>Otros densímetros</translation>
    </message>
    <message>
        <source>Trench correction</source>
        <translation>Corrección de zanja</translation>
    </message>
    <message>
        <source>Move the test</source>
        <translation>Mover el ensayo</translation>
    </message>
    <message>
        <source>Enter the tape</source>
        <translation>Ingresar la cinta</translation>
    </message>
    <message>
        <source>None near</source>
        <translation>Nada cerca</translation>
    </message>
    <message>
        <source>None inside</source>
        <translation>Ninguno dentro</translation>
    </message>
    <message>
        <source>Have it moved</source>
        <translation>Pedir que se mueva</translation>
    </message>
    <message>
        <source>Wait till clear</source>
        <translation>Esperar a que esté libre</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se conoce</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>Requiere %1</translation>
    </message>
    <message>
        <source>Within %1, by eye</source>
        <translation>Dentro de %1, a ojo</translation>
    </message>
    <message>
        <source>Ring of %1, by eye</source>
        <translation>Círculo de %1, a ojo</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Con cinta</translation>
    </message>
    <message>
        <source>by tape</source>
        <translation>con cinta</translation>
    </message>
    <message>
        <source>from the map, ±%1</source>
        <translation>del mapa, ±%1</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Libre</translation>
    </message>
    <message>
        <source>Too close</source>
        <translation>Demasiado cerca</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>at %1, %2 needed</source>
        <translation>a %1, requiere %2</translation>
    </message>
    <message>
        <source>Asked to move. Say so when it stands outside.</source>
        <translation>Se pidió moverlo. Indique cuando esté fuera.</translation>
    </message>
    <message>
        <source>Waiting. Say so when nobody is inside.</source>
        <translation>En espera. Indique cuando no haya nadie dentro.</translation>
    </message>
    <message>
        <source>%1, with the trench correction</source>
        <translation>%1, con la corrección de zanja</translation>
    </message>
    <message>
        <source>No trench offset of today is in the book for this gauge. Take standard counts in and outside the trench first, or move the test.</source>
        <translation>La libreta no tiene corrección de zanja de hoy para este densímetro. Tome antes conteos estándar dentro y fuera de la zanja, o mueva el ensayo.</translation>
    </message>
    <message>
        <source>%1, overridden: %2</source>
        <translation>%1, con excepción: %2</translation>
    </message>
    <message>
        <source>Information only.</source>
        <translation>Solo informativo.</translation>
    </message>
    <message>
        <source>The map knows only what was placed on it. Look round for anything nearer.</source>
        <translation>El mapa solo conoce lo que se colocó en él. Mire alrededor por si hay algo más cerca.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::JobSheet</name>
    <message>
        <source>The file cannot be read: %1.</source>
        <translation>No se puede leer el archivo: %1.</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>aún no elegido</translation>
    </message>
    <message>
        <source>Seal what changed</source>
        <translation>Sellar los cambios</translation>
    </message>
    <message>
        <source>Begin the job</source>
        <translation>Comenzar el trabajo</translation>
    </message>
    <message>
        <source>Seal: type the job&apos;s name</source>
        <translation>Sellar: escriba el nombre del trabajo</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nada ha cambiado</translation>
    </message>
    <message>
        <source>Seal: say why it changes</source>
        <translation>Sellar: diga por qué cambia</translation>
    </message>
    <message>
        <source>Seal: choose the coordinate system</source>
        <translation>Sellar: elija el sistema de coordenadas</translation>
    </message>
    <message>
        <source>Seal: type your name</source>
        <translation>Sellar: escriba su nombre</translation>
    </message>
    <message>
        <source>Seal: choose your role</source>
        <translation>Sellar: elija su función</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Engineer</source>
        <translation>Ingeniero</translation>
    </message>
</context>
<context>
    <name>groundcount::view::KitForm</name>
    <message>
        <source>Use this date</source>
        <translation>Usar esta fecha</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>There is no such day</source>
        <translation>Ese día no existe</translation>
    </message>
</context>
<context>
    <name>groundcount::view::KitView</name>
    <message>
        <source>%1, peak %2</source>
        <translation>%1, pico %2</translation>
    </message>
    <message>
        <source>at %1 %</source>
        <translation>a %1 %</translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>venció el %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Coordinate system</source>
        <translation>Sistema de coordenadas</translation>
    </message>
    <message>
        <source>Densities in</source>
        <translation>Densidades en</translation>
    </message>
    <message>
        <source>Field book</source>
        <translation>Libreta de campo</translation>
    </message>
    <message>
        <source>%1, rev. %2</source>
        <translation>%1, rev. %2</translation>
    </message>
    <message>
        <source>%1 limits, %2 choices, each with its source</source>
        <translation>%1 límites, %2 opciones, con la fuente de cada uno</translation>
    </message>
    <message>
        <source>none sealed</source>
        <translation>nada sellado</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>serie %1</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Calibración</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>del %1</translation>
    </message>
    <message>
        <source>Leak test</source>
        <translation>Prueba de fugas</translation>
    </message>
    <message>
        <source>of %1, %2</source>
        <translation>del %1, %2</translation>
    </message>
    <message>
        <source>Custody</source>
        <translation>Custodia</translation>
    </message>
    <message>
        <source>no record</source>
        <translation>sin registro</translation>
    </message>
    <message>
        <source>%1 %, %2 % off the mean</source>
        <translation>%1 %, a %2 % de la media</translation>
    </message>
    <message>
        <source>no earlier counts</source>
        <translation>sin conteos anteriores</translation>
    </message>
    <message>
        <source>at work here</source>
        <translation>trabaja aquí</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>from station %1, %2 %3 long</source>
        <translation>desde la estación %1, %2 %3 de largo</translation>
    </message>
</context>
<context>
    <name>groundcount::view::LiftSheet</name>
    <message>
        <source>New lift</source>
        <translation>Capa nueva</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estos</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Thickness, compacted</source>
        <translation>Espesor, compactado</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>%1 in.</source>
        <translation>%1 in.</translation>
    </message>
    <message>
        <source>Seal lift %1</source>
        <translation>Sellar la capa %1</translation>
    </message>
    <message>
        <source>Seal: a lot comes first</source>
        <translation>Sellar: primero hace falta un lote</translation>
    </message>
    <message>
        <source>The lift&apos;s number is %1; allowed: whole numbers from %2 to %3</source>
        <translation>El número de la capa es %1; permitido: números enteros de %2 a %3</translation>
    </message>
    <message>
        <source>Seal: the lot has a lift %1 already</source>
        <translation>Sellar: el lote ya tiene una capa %1</translation>
    </message>
    <message>
        <source>Seal: type the thickness</source>
        <translation>Sellar: escriba el espesor</translation>
    </message>
    <message>
        <source>The thickness is %1 in.; allowed: above 0 to %2</source>
        <translation>El espesor es %1 pulg.; permitido: mayor que 0 hasta %2</translation>
    </message>
</context>
<context>
    <name>groundcount::view::LineSheet</name>
    <message>
        <source>Begin station</source>
        <translation>Estación inicial</translation>
    </message>
    <message>
        <source>5000 for 50+00</source>
        <translation>5000 para 50+00</translation>
    </message>
    <message>
        <source>Use this station</source>
        <translation>Usar esta estación</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>grid coordinates off the plans</source>
        <translation>coordenadas de cuadrícula de los planos</translation>
    </message>
    <message>
        <source>Use this point</source>
        <translation>Usar este punto</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>N %1, E %2</source>
        <translation>N %1, E %2</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Línea nueva</translation>
    </message>
    <message>
        <source>%1 %2 long, azimuth %3° from grid north, to station %4</source>
        <translation>%1 %2 de largo, acimut %3° desde el norte de cuadrícula, hasta la estación %4</translation>
    </message>
    <message>
        <source>Seal the line</source>
        <translation>Sellar la línea</translation>
    </message>
    <message>
        <source>Seal: the book has no job yet</source>
        <translation>Sellar: la libreta aún no tiene obra</translation>
    </message>
    <message>
        <source>Seal: type the line&apos;s name</source>
        <translation>Sellar: escriba el nombre de la línea</translation>
    </message>
    <message>
        <source>Begin of the line</source>
        <translation>Comienzo de la línea</translation>
    </message>
    <message>
        <source>End of the line</source>
        <translation>Fin de la línea</translation>
    </message>
    <message>
        <source>Seal: type the begin station</source>
        <translation>Sellar: escriba la estación inicial</translation>
    </message>
    <message>
        <source>Seal: type the begin of the line</source>
        <translation>Sellar: escriba el comienzo de la línea</translation>
    </message>
    <message>
        <source>Seal: type the end of the line</source>
        <translation>Sellar: escriba el fin de la línea</translation>
    </message>
</context>
<context>
    <name>groundcount::view::LotSheet</name>
    <message>
        <source>Stations</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>5000 for 50+00</source>
        <translation>5000 para 50+00</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estos</translation>
    </message>
    <message>
        <source>Begin station</source>
        <translation>Estación inicial</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>End station</source>
        <translation>Estación final</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>from the line to each edge</source>
        <translation>de la línea a cada borde</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Percent compaction</source>
        <translation>Compactación en %</translation>
    </message>
    <message>
        <source>as the specification asks; the most may stay empty</source>
        <translation>como pide la especificación; el máximo puede quedar vacío</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Al menos</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>A lo más</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Lo más seco</translation>
    </message>
    <message>
        <source>Wettest</source>
        <translation>Lo más húmedo</translation>
    </message>
    <message>
        <source>percentage points off optimum</source>
        <translation>puntos porcentuales respecto del óptimo</translation>
    </message>
    <message>
        <source>percent of the optimum</source>
        <translation>porcentaje del óptimo</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Below optimum</source>
        <translation>Bajo el óptimo</translation>
    </message>
    <message>
        <source>Above optimum</source>
        <translation>Sobre el óptimo</translation>
    </message>
    <message>
        <source>Tests per lift</source>
        <translation>Ensayos por capa</translation>
    </message>
    <message>
        <source>as the specification asks; one sublot each unless said</source>
        <translation>como pide la especificación; un sublote por ensayo si no se dice otra cosa</translation>
    </message>
    <message>
        <source>Sublots</source>
        <translation>Sublotes</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>New lot</source>
        <translation>Lote nuevo</translation>
    </message>
    <message>
        <source>%1 Lt, %2 Rt</source>
        <translation>%1 Izq, %2 Der</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 a %2 %</translation>
    </message>
    <message>
        <source>Seal what changed</source>
        <translation>Sellar los cambios</translation>
    </message>
    <message>
        <source>Seal the lot</source>
        <translation>Sellar el lote</translation>
    </message>
    <message>
        <source>Seal: the book has no job yet</source>
        <translation>Sellar: la libreta aún no tiene obra</translation>
    </message>
    <message>
        <source>Seal: type the lot&apos;s name</source>
        <translation>Sellar: escriba el nombre del lote</translation>
    </message>
    <message>
        <source>Seal: the book has a lot %1 already</source>
        <translation>Sellar: la libreta ya tiene un lote %1</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nada ha cambiado</translation>
    </message>
    <message>
        <source>Seal: say why it changes</source>
        <translation>Sellar: diga por qué cambia</translation>
    </message>
    <message>
        <source>Seal: a line comes first</source>
        <translation>Sellar: primero hace falta una línea</translation>
    </message>
    <message>
        <source>Seal: choose the line</source>
        <translation>Sellar: elija la línea</translation>
    </message>
    <message>
        <source>Seal: type the stations</source>
        <translation>Sellar: escriba las estaciones</translation>
    </message>
    <message>
        <source>Seal: type the width</source>
        <translation>Sellar: escriba el ancho</translation>
    </message>
    <message>
        <source>Seal: choose the reference test</source>
        <translation>Sellar: elija el ensayo de referencia</translation>
    </message>
    <message>
        <source>Seal: type the percent compaction</source>
        <translation>Sellar: escriba el porcentaje de compactación</translation>
    </message>
    <message>
        <source>Percent compaction is %1; allowed: above 0 to %2</source>
        <translation>El porcentaje de compactación es %1; permitido: mayor que 0 hasta %2</translation>
    </message>
    <message>
        <source>At least %1 % and at most %2 % leave nothing between</source>
        <translation>Al menos %1 % y a lo más %2 % no dejan nada entre ellos</translation>
    </message>
    <message>
        <source>Seal: type the moisture window</source>
        <translation>Sellar: escriba la ventana de humedad</translation>
    </message>
    <message>
        <source>The window&apos;s wettest, %1, is not above its driest, %2</source>
        <translation>Lo más húmedo de la ventana, %1, no está por encima de lo más seco, %2</translation>
    </message>
    <message>
        <source>Seal: type the tests per lift</source>
        <translation>Sellar: escriba los ensayos por capa</translation>
    </message>
    <message>
        <source>Tests per lift are %1; allowed: whole numbers from 1 to %2</source>
        <translation>Los ensayos por capa son %1; permitido: números enteros de 1 a %2</translation>
    </message>
    <message>
        <source>Sublots are %1; allowed: whole numbers from 1 to %2</source>
        <translation>Los sublotes son %1; permitido: números enteros de 1 a %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Points off optimum</source>
        <translation>Puntos del óptimo</translation>
    </message>
    <message>
        <source>Percent of optimum</source>
        <translation>Porcentaje del óptimo</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>groundcount::view::LotsView</name>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>del %1</translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n falla abierta</numerusform>
            <numerusform>%n fallas abiertas</numerusform>
        </translation>
    </message>
    <message>
        <source>all made</source>
        <translation>todos hechos</translation>
    </message>
    <message>
        <source>%1 owed</source>
        <translation>%1 pendientes</translation>
    </message>
    <message>
        <source>%1 made, %2 owed, %3 open</source>
        <translation>%1 hechos, %2 pendientes, %3 sin cerrar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>is open, %1</source>
        <translation>está abierto, %1</translation>
    </message>
    <message>
        <source>%1 %, %2</source>
        <translation>%1 %, %2</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>capa %1</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 a %2 %</translation>
    </message>
    <message>
        <source>%1 % or more</source>
        <translation>%1 % o más</translation>
    </message>
    <message>
        <source>%1 % or less</source>
        <translation>%1 % o menos</translation>
    </message>
    <message>
        <source>% of optimum</source>
        <translation>% del óptimo</translation>
    </message>
    <message>
        <source>of optimum</source>
        <translation>del óptimo</translation>
    </message>
    <message>
        <source>moisture %1 to %2 %3</source>
        <translation>humedad %1 a %2 %3</translation>
    </message>
    <message>
        <source>moisture from %1 %2</source>
        <translation>humedad desde %1 %2</translation>
    </message>
    <message>
        <source>moisture up to %1 %2</source>
        <translation>humedad hasta %1 %2</translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation>Sin requisito</translation>
    </message>
    <message>
        <source>Custody of %1</source>
        <translation>Custodia de %1</translation>
    </message>
</context>
<context>
    <name>groundcount::view::MapView</name>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>Lot %1, lift %2</source>
        <translation>Lote %1, capa %2</translation>
    </message>
    <message>
        <source>Lots %1, lift %2</source>
        <translation>Lotes %1, capa %2</translation>
    </message>
    <message>
        <source>No lots in this book yet</source>
        <translation>Aún no hay lotes en esta libreta</translation>
    </message>
    <message>
        <source>%1 of %2 made</source>
        <translation>%1 de %2 hechos</translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n falla abierta</numerusform>
            <numerusform>%n fallas abiertas</numerusform>
        </translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>Test %1, %2</source>
        <translation>Ensayo %1, %2</translation>
    </message>
    <message>
        <source>Site %1, owed</source>
        <translation>Sitio %1, pendiente</translation>
    </message>
    <message>
        <source>Beside the alignment&apos;s ends</source>
        <translation>Junto a los extremos del eje</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>lb/ft³</source>
        <translation>lb/ft³</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Dry, wet</source>
        <translation>Seca, húmeda</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>%1 in.</source>
        <translation>%1 in.</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Retest of</source>
        <translation>Repetición de</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Reading the tests…</source>
        <translation>Leyendo los ensayos…</translation>
    </message>
    <message>
        <source>%1 lots, lift %2</source>
        <translation>%1 lotes, capa %2</translation>
    </message>
</context>
<context>
    <name>groundcount::view::MaterialSheet</name>
    <message>
        <source>3 points</source>
        <translation>3 puntos</translation>
    </message>
    <message>
        <source>Parabola</source>
        <translation>Parábola</translation>
    </message>
    <message>
        <source>Spline</source>
        <translation>Spline</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Use these points</source>
        <translation>Usar estos puntos</translation>
    </message>
    <message>
        <source>Moisture %1</source>
        <translation>Humedad %1</translation>
    </message>
    <message>
        <source>Dry %1</source>
        <translation>Seca %1</translation>
    </message>
    <message>
        <source>Peak by hand</source>
        <translation>Pico a mano</translation>
    </message>
    <message>
        <source>Use this peak</source>
        <translation>Usar este pico</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Optimum</source>
        <translation>Óptimo</translation>
    </message>
    <message>
        <source>Gravity of solids</source>
        <translation>Gravedad de sólidos</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Gravity</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <source>Maximum ±</source>
        <translation>Máximo ±</translation>
    </message>
    <message>
        <source>Coarse particles</source>
        <translation>Partículas gruesas</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estos</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>%1 points, peak %2 %3 at %4 %</source>
        <translation>%1 puntos, pico %2 %3 a %4 %</translation>
    </message>
    <message>
        <source>at %1 %</source>
        <translation>a %1 %</translation>
    </message>
    <message>
        <source>Three points</source>
        <translation>Tres puntos</translation>
    </message>
    <message>
        <source>Parabola, all points</source>
        <translation>Parábola, todos los puntos</translation>
    </message>
    <message>
        <source>Spline, all points</source>
        <translation>Spline, todos los puntos</translation>
    </message>
    <message>
        <source>The parabola through all points opens upward: no peak this way.</source>
        <translation>La parábola por todos los puntos se abre hacia arriba: así no hay pico.</translation>
    </message>
    <message>
        <source>%1 % saturated at the peak.</source>
        <translation>%1 % de saturación en el pico.</translation>
    </message>
    <message>
        <source>Proctor %1</source>
        <translation>Proctor %1</translation>
    </message>
    <message>
        <source>New material</source>
        <translation>Material nuevo</translation>
    </message>
    <message>
        <source>, method %1</source>
        <translation>, método %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>gravity %1</source>
        <translation>gravedad %1</translation>
    </message>
    <message>
        <source>, %1 %</source>
        <translation>, %1 %</translation>
    </message>
    <message>
        <source>%1 at %2 %</source>
        <translation>%1 a %2 %</translation>
    </message>
    <message>
        <source>Amend the test</source>
        <translation>Enmendar el ensayo</translation>
    </message>
    <message>
        <source>Seal material and test</source>
        <translation>Sellar material y ensayo</translation>
    </message>
    <message>
        <source>Sealed. Nothing has changed</source>
        <translation>Sellado. Nada ha cambiado</translation>
    </message>
    <message>
        <source>Seal: name the material</source>
        <translation>Sellar: nombre el material</translation>
    </message>
    <message>
        <source>Seal: type the test&apos;s number and standard</source>
        <translation>Sellar: escriba el número y la norma del ensayo</translation>
    </message>
    <message>
        <source>Seal: type the peak</source>
        <translation>Sellar: escriba el pico</translation>
    </message>
    <message>
        <source>Seal: type three points or more</source>
        <translation>Sellar: escriba tres puntos o más</translation>
    </message>
    <message>
        <source>Seal: no peak this way</source>
        <translation>Sellar: así no hay pico</translation>
    </message>
    <message>
        <source>Seal: say why it is amended</source>
        <translation>Sellar: diga por qué se enmienda</translation>
    </message>
</context>
<context>
    <name>groundcount::view::NumberEntry</name>
    <message>
        <source>Next: %1</source>
        <translation>Sigue: %1</translation>
    </message>
</context>
<context>
    <name>groundcount::view::ObstacleSheet</name>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Structure</source>
        <translation>Estructura</translation>
    </message>
    <message>
        <source>Pipe</source>
        <translation>Tubería</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Densímetro</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>NE</source>
        <translation>NE</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>SE</source>
        <translation>SE</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>SW</source>
        <translation>SO</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>NW</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Con cinta</translation>
    </message>
    <message>
        <source>to the nearest edge</source>
        <translation>hasta el borde más cercano</translation>
    </message>
    <message>
        <source>Use the tape</source>
        <translation>Usar la cinta</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Type the distance</source>
        <translation>Ingresar la distancia</translation>
    </message>
    <message>
        <source>Enter the tape</source>
        <translation>Ingresar la cinta</translation>
    </message>
    <message>
        <source>%1 ft by tape</source>
        <translation>%1 ft con cinta</translation>
    </message>
    <message>
        <source>Seal: say what it is</source>
        <translation>Sellar: diga qué es</translation>
    </message>
    <message>
        <source>Seal: enter the tape</source>
        <translation>Sellar: ingrese la medida con cinta</translation>
    </message>
    <message>
        <source>Seal: say in which direction</source>
        <translation>Sellar: diga en qué dirección</translation>
    </message>
</context>
<context>
    <name>groundcount::view::OffsetSheet</name>
    <message>
        <source>Trench</source>
        <translation>Zanja</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Dry basis</source>
        <translation>Base seca</translation>
    </message>
    <message>
        <source>Wet basis</source>
        <translation>Base húmeda</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Razón</translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation>Tomada el</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Depth of the tests</source>
        <translation>Profundidad de los ensayos</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>in.</source>
        <translation>in.</translation>
    </message>
    <message>
        <source>Standard counts</source>
        <translation>Conteos estándar</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Muestras</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Ubicaciones</translation>
    </message>
    <message>
        <source>Use these</source>
        <translation>Usar estos</translation>
    </message>
    <message>
        <source>Moisture, trench</source>
        <translation>Humedad, zanja</translation>
    </message>
    <message>
        <source>Moisture, outside</source>
        <translation>Humedad, fuera</translation>
    </message>
    <message>
        <source>Density, trench</source>
        <translation>Densidad, zanja</translation>
    </message>
    <message>
        <source>Density, outside</source>
        <translation>Densidad, fuera</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>%1: dried</source>
        <translation>%1: secada</translation>
    </message>
    <message>
        <source>%1: gauge wet</source>
        <translation>%1: densímetro, húmeda</translation>
    </message>
    <message>
        <source>%1: gauge water</source>
        <translation>%1: densímetro, agua</translation>
    </message>
    <message>
        <source>%1: reference</source>
        <translation>%1: referencia</translation>
    </message>
    <message>
        <source>%1: gauge</source>
        <translation>%1: densímetro</translation>
    </message>
    <message>
        <source>moisture counts</source>
        <translation>conteos de humedad</translation>
    </message>
    <message>
        <source>%1 % of the standard count; taken off each moisture count in the trench.</source>
        <translation>%1 % del conteo estándar; se resta de cada conteo de humedad en la zanja.</translation>
    </message>
    <message>
        <source>Density %1 counts.</source>
        <translation>Densidad: %1 conteos.</translation>
    </message>
    <message>
        <source>More than %1 % of the standard count. Was the block where the test will be, and are the two the right way round?</source>
        <translation>Más de %1 % del conteo estándar. ¿Estaba el bloque donde se hará el ensayo, y están los dos en el orden correcto?</translation>
    </message>
    <message>
        <source>Fewer counts in the trench than outside. A wall adds counts; are the two the wrong way round?</source>
        <translation>Menos conteos en la zanja que fuera. Un muro suma conteos; ¿están los dos invertidos?</translation>
    </message>
    <message>
        <source>per mille</source>
        <translation>por mil</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>%1 samples; dried minus gauge %2 points</source>
        <translation>%1 muestras; secada menos densímetro %2 puntos</translation>
    </message>
    <message>
        <source>, scatter %1</source>
        <translation>, dispersión %1</translation>
    </message>
    <message>
        <source>%1 samples say little about their scatter.</source>
        <translation>%1 muestras dicen poco sobre su dispersión.</translation>
    </message>
    <message>
        <source>Mean of %1 differences, scatter %2; added to each wet density.</source>
        <translation>Media de %1 diferencias, dispersión %2; se suma a cada densidad húmeda.</translation>
    </message>
    <message>
        <source>The scatter is as large as the bias: chance alone may give it (t %1, critical %2).</source>
        <translation>La dispersión es tan grande como el sesgo: puede deberse solo al azar (t %1, crítico %2).</translation>
    </message>
    <message>
        <source>Moisture in the trench</source>
        <translation>Humedad en la zanja</translation>
    </message>
    <message>
        <source>Moisture outside</source>
        <translation>Humedad fuera</translation>
    </message>
    <message>
        <source>Density in the trench</source>
        <translation>Densidad en la zanja</translation>
    </message>
    <message>
        <source>Density outside</source>
        <translation>Densidad fuera</translation>
    </message>
    <message>
        <source>Sample %1: gauge %2 of %3</source>
        <translation>Muestra %1: densímetro %2 de %3</translation>
    </message>
    <message>
        <source>Spot %1: gauge %2</source>
        <translation>Ubicación %1: densímetro %2</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>New offset</source>
        <translation>Corrección nueva</translation>
    </message>
    <message>
        <source>sealed</source>
        <translation>sellada</translation>
    </message>
    <message>
        <source>A share of the dry mass: w grows with 100 + w.</source>
        <translation>Una parte de la masa seca: w crece con 100 + w.</translation>
    </message>
    <message>
        <source>A share of the wet density.</source>
        <translation>Una parte de la densidad húmeda.</translation>
    </message>
    <message>
        <source>A fixed mass of water per volume.</source>
        <translation>Una masa fija de agua por volumen.</translation>
    </message>
    <message>
        <source>A fixed number of points.</source>
        <translation>Un número fijo de puntos.</translation>
    </message>
    <message>
        <source>A fixed ratio.</source>
        <translation>Una razón fija.</translation>
    </message>
    <message>
        <source>Standard counts on the block, at the distance from the wall and the way round of the test, and outside</source>
        <translation>Conteos estándar sobre el bloque, a la distancia del muro y con la orientación del ensayo, y fuera</translation>
    </message>
    <message>
        <source>Samples from under the gauge, dried by another method</source>
        <translation>Muestras de debajo del densímetro, secadas por otro método</translation>
    </message>
    <message>
        <source>Spots measured by the gauge and by another method</source>
        <translation>Ubicaciones medidas con el densímetro y por otro método</translation>
    </message>
    <message>
        <source>Change the figures</source>
        <translation>Cambiar las cifras</translation>
    </message>
    <message>
        <source>Type the figures</source>
        <translation>Escribir las cifras</translation>
    </message>
    <message>
        <source>Seal the offset</source>
        <translation>Sellar la corrección</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Sellada</translation>
    </message>
    <message>
        <source>Seal: choose what it corrects</source>
        <translation>Sellar: elija qué corrige</translation>
    </message>
    <message>
        <source>Seal: the book has no gauge yet</source>
        <translation>Sellar: la libreta aún no tiene densímetro</translation>
    </message>
    <message>
        <source>Seal: say where</source>
        <translation>Sellar: indicar dónde</translation>
    </message>
    <message>
        <source>Seal: type the date</source>
        <translation>Sellar: escriba la fecha</translation>
    </message>
    <message>
        <source>Seal: type both moisture counts</source>
        <translation>Sellar: escriba ambos conteos de humedad</translation>
    </message>
    <message>
        <source>Seal: type a whole sample</source>
        <translation>Sellar: escriba una muestra completa</translation>
    </message>
    <message>
        <source>Seal: type two whole spots</source>
        <translation>Sellar: escriba dos ubicaciones completas</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PaperSheet</name>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Made %1 by Groundcount %2</source>
        <translation>Hecho %1 con Groundcount %2</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>No program of this device shows a PDF. Save it and print it elsewhere.</source>
        <translation>Ningún programa de este dispositivo muestra un PDF. Guárdelo e imprímalo en otro lugar.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PersonSheet</name>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Engineer</source>
        <translation>Ingeniero</translation>
    </message>
    <message>
        <source>Certificate ends</source>
        <translation>El certificado vence</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Persona nueva</translation>
    </message>
    <message>
        <source>The certificate ended %1.</source>
        <translation>El certificado venció el %1.</translation>
    </message>
    <message>
        <source>Seal what changed</source>
        <translation>Sellar los cambios</translation>
    </message>
    <message>
        <source>Seal the person</source>
        <translation>Sellar la persona</translation>
    </message>
    <message>
        <source>Seal: type the name</source>
        <translation>Sellar: escriba el nombre</translation>
    </message>
    <message>
        <source>Seal: choose the role</source>
        <translation>Sellar: elija la función</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nada ha cambiado</translation>
    </message>
    <message>
        <source>Seal: say why it changes</source>
        <translation>Sellar: diga por qué cambia</translation>
    </message>
    <message>
        <source>Contractor</source>
        <translation>Contratista</translation>
    </message>
    <message>
        <source>Agency</source>
        <translation>Organismo</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PhotoFile</name>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 no se puede leer: %2.</translation>
    </message>
    <message>
        <source>%1 has %2 MB; a photo may have at most %3 MB.</source>
        <translation>%1 tiene %2 MB; una foto puede tener como máximo %3 MB.</translation>
    </message>
    <message>
        <source>%1 is no JPEG or PNG picture that can be shown.</source>
        <translation>%1 no es una imagen JPEG o PNG que se pueda mostrar.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PhotoTake</name>
    <message>
        <source>The camera gave no picture in %1 s. Attach a photo from a file.</source>
        <translation>La cámara no dio ninguna imagen en %1 s. Adjunte una foto desde un archivo.</translation>
    </message>
    <message>
        <source>The app may not use the camera. Allow it in the device&apos;s settings, or attach a photo from a file.</source>
        <translation>La aplicación no puede usar la cámara. Permítalo en los ajustes del dispositivo o adjunte una foto desde un archivo.</translation>
    </message>
    <message>
        <source>No room for a picture: %1.</source>
        <translation>No hay lugar para una imagen: %1.</translation>
    </message>
    <message>
        <source>No camera on this device. Attach a photo from a file.</source>
        <translation>Este dispositivo no tiene cámara. Adjunte una foto desde un archivo.</translation>
    </message>
    <message>
        <source>The camera gives no picture: %1. Attach a photo from a file.</source>
        <translation>La cámara no da ninguna imagen: %1. Adjunte una foto desde un archivo.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PlaceStep</name>
    <message>
        <source>Seal place</source>
        <translation>Sellar el lugar</translation>
    </message>
    <message>
        <source>No lot yet</source>
        <translation>Aún sin lote</translation>
    </message>
    <message>
        <source>Outside every lot</source>
        <translation>Fuera de todo lote</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>Lot %1, lift %2</source>
        <translation>Lote %1, capa %2</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>sublot %1, found on the map</source>
        <translation>sublote %1, hallado en el mapa</translation>
    </message>
    <message>
        <source>found on the map</source>
        <translation>hallado en el mapa</translation>
    </message>
    <message>
        <source>Test %1 was %2 ft away</source>
        <translation>El ensayo %1 estaba a %2 ft</translation>
    </message>
    <message>
        <source>Drawn site %1 is %2 ft away</source>
        <translation>El sitio sorteado %1 está a %2 ft</translation>
    </message>
    <message>
        <source>Retest of %1</source>
        <translation>Reensayo de %1</translation>
    </message>
    <message>
        <source>Seal: choose a gauge first</source>
        <translation>Sellar: elija primero un densímetro</translation>
    </message>
    <message>
        <source>Seal: the gauge is not ready</source>
        <translation>Sellar: el densímetro no está listo</translation>
    </message>
    <message>
        <source>Seal: no place yet</source>
        <translation>Sellar: aún sin lugar</translation>
    </message>
    <message>
        <source>Seal: wait for a position</source>
        <translation>Sellar: espere una posición</translation>
    </message>
    <message>
        <source>Seal: hold still, %1 of %2 fixes</source>
        <translation>Sellar: no se mueva, %1 de %2 posiciones fijas</translation>
    </message>
    <message>
        <source>Seal: outside every lot</source>
        <translation>Sellar: fuera de todo lote</translation>
    </message>
    <message>
        <source>Seal: the lot has no lift</source>
        <translation>Sellar: el lote no tiene capa</translation>
    </message>
    <message>
        <source>Seal: say random, directed or retest</source>
        <translation>Sellar: indique aleatorio, dirigido o reensayo</translation>
    </message>
    <message>
        <source>Seal: say which test is retested</source>
        <translation>Sellar: indique qué ensayo se repite</translation>
    </message>
    <message>
        <source>Seal: no drawn site is owed here</source>
        <translation>Sellar: aquí no hay sitio sorteado pendiente</translation>
    </message>
    <message>
        <source>Seal: a random test needs coordinates</source>
        <translation>Sellar: un ensayo aleatorio requiere coordenadas</translation>
    </message>
    <message>
        <source>Random</source>
        <translation>Aleatorio</translation>
    </message>
    <message>
        <source>Directed</source>
        <translation>Dirigido</translation>
    </message>
    <message>
        <source>Retest of…</source>
        <translation>Reensayo de…</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Con cinta</translation>
    </message>
    <message>
        <source>Use this place</source>
        <translation>Usar este lugar</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Left of the line</source>
        <translation>A la izquierda de la línea</translation>
    </message>
    <message>
        <source>Right of the line</source>
        <translation>A la derecha de la línea</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <translation>%1, lote %2</translation>
    </message>
    <message>
        <source>Type station and offset</source>
        <translation>Escribir estación y desplazamiento</translation>
    </message>
    <message>
        <source>Averaged, %1 needed</source>
        <translation>Promediado, se requieren %1</translation>
    </message>
    <message>
        <source>Accuracy, 2DRMS</source>
        <translation>Exactitud, 2DRMS</translation>
    </message>
    <message>
        <source>Hold still.</source>
        <translation>No se mueva.</translation>
    </message>
    <message>
        <source>by tape</source>
        <translation>con cinta</translation>
    </message>
    <message>
        <source>%1 fixes</source>
        <translation>%1 posiciones fijas</translation>
    </message>
    <message>
        <source>No fix yet</source>
        <translation>Aún sin posición fija</translation>
    </message>
    <message>
        <source>No receiver</source>
        <translation>Sin receptor</translation>
    </message>
    <message>
        <source>1 fix</source>
        <translation>1 posición fija</translation>
    </message>
    <message>
        <source>Squares of %1 ft. Hold still.</source>
        <translation>Cuadros de %1 ft. No se mueva.</translation>
    </message>
    <message>
        <source>ft Lt</source>
        <translation>ft Izq</translation>
    </message>
    <message>
        <source>ft Rt</source>
        <translation>ft Der</translation>
    </message>
    <message>
        <source>Grid, %1</source>
        <translation>Cuadrícula, %1</translation>
    </message>
    <message>
        <source>N %1   E %2</source>
        <translation>N %1   E %2</translation>
    </message>
    <message>
        <source>The job has no line to tape along: choose a receiver, or hold a finger on the map where the test is.</source>
        <translation>La obra no tiene línea para medir con cinta: elija un receptor, o mantenga un dedo en el mapa donde está el ensayo.</translation>
    </message>
    <message>
        <source>on the map</source>
        <translation>en el mapa</translation>
    </message>
</context>
<context>
    <name>groundcount::view::ProfileView</name>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>del %1</translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n falla abierta</numerusform>
            <numerusform>%n fallas abiertas</numerusform>
        </translation>
    </message>
    <message>
        <source>The lot is given by its corners: each lift against the distance along the longest side, azimuth %1°.</source>
        <translation>El lote está dado por sus esquinas: cada capa según la distancia a lo largo del lado más largo, acimut %1°.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::PublishView</name>
    <message>
        <source>Publish: no book is open</source>
        <translation>Publicar: no hay ninguna libreta abierta</translation>
    </message>
    <message>
        <source>Publish: the job needs a coordinate system</source>
        <translation>Publicar: la obra necesita un sistema de coordenadas</translation>
    </message>
    <message>
        <source>Publish: type the database&apos;s address</source>
        <translation>Publicar: escriba la dirección de la base de datos</translation>
    </message>
    <message>
        <source>Publish: the address cannot be used</source>
        <translation>Publicar: la dirección no se puede usar</translation>
    </message>
    <message>
        <source>Publish: type a name for the job&apos;s tables</source>
        <translation>Publicar: escriba un nombre para las tablas de la obra</translation>
    </message>
    <message>
        <source>Stopping</source>
        <translation>Deteniendo</translation>
    </message>
    <message>
        <source>Reading the book and reaching the server</source>
        <translation>Leyendo la libreta y llegando al servidor</translation>
    </message>
    <message>
        <source>Sending: %1 rows</source>
        <translation>Enviando: %1 filas</translation>
    </message>
    <message>
        <source>Stopped: the tables are as they were.</source>
        <translation>Detenido: las tablas están como estaban.</translation>
    </message>
    <message>
        <source>Published: %1 rows.</source>
        <translation>Publicado: %1 filas.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::Receiver</name>
    <message>
        <source>Host and port, for example 192.168.4.1:5017</source>
        <translation>Equipo y puerto, por ejemplo 192.168.4.1:5017</translation>
    </message>
    <message>
        <source>Serial line, for example /dev/ttyUSB0</source>
        <translation>Línea serie, por ejemplo /dev/ttyUSB0</translation>
    </message>
    <message>
        <source>Receiver: no book is open</source>
        <translation>Receptor: no hay ningún libro abierto</translation>
    </message>
    <message>
        <source>Receiver: type its host and port</source>
        <translation>Receptor: escriba su equipo y puerto</translation>
    </message>
    <message>
        <source>Receiver: type its serial line</source>
        <translation>Receptor: escriba su línea serie</translation>
    </message>
    <message>
        <source>No receiver in use.</source>
        <translation>Ningún receptor en uso.</translation>
    </message>
    <message>
        <source>Positions come: %1.</source>
        <translation>Llegan posiciones: %1.</translation>
    </message>
    <message>
        <source>The receiver is lost.</source>
        <translation>El receptor se ha perdido.</translation>
    </message>
    <message>
        <source>The receiver repeats itself.</source>
        <translation>El receptor se repite.</translation>
    </message>
    <message>
        <source>Waiting for the first position.</source>
        <translation>Esperando la primera posición.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Este aparato</translation>
    </message>
    <message>
        <source>Network</source>
        <translation>Red</translation>
    </message>
    <message>
        <source>Serial line</source>
        <translation>Línea serie</translation>
    </message>
</context>
<context>
    <name>groundcount::view::ReviewView</name>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Whole lot</source>
        <translation>Lote entero</translation>
    </message>
    <message>
        <source>Lift %1</source>
        <translation>Capa %1</translation>
    </message>
    <message>
        <source>No engineer is sealed in this book; add one on Kit.</source>
        <translation>En este libro no hay ingeniero sellado; añada uno en Equipo.</translation>
    </message>
    <message>
        <source>Not yet to be accepted: %1</source>
        <translation>Aún no se puede aceptar: %1</translation>
    </message>
    <message>
        <source>is open, %1</source>
        <translation>está abierto, %1</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>capa %1</translation>
    </message>
    <message>
        <source>Site %1</source>
        <translation>Sitio %1</translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) without a drawn site</source>
        <translation>
            <numerusform>%n ensayo sin sitio sorteado</numerusform>
            <numerusform>%n ensayos sin sitio sorteado</numerusform>
        </translation>
    </message>
    <message>
        <source>Test %1, %2</source>
        <translation>Ensayo %1, %2</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>a person not in this book</source>
        <translation>una persona que no está en esta libreta</translation>
    </message>
    <message>
        <source>because: %1</source>
        <translation>porque: %1</translation>
    </message>
    <message>
        <source>Looking through the book…</source>
        <translation>Revisando el libro…</translation>
    </message>
    <message>
        <source>Nothing unusual was found.</source>
        <translation>No se encontró nada inusual.</translation>
    </message>
    <message>
        <source>The reason is missing: without one the word cannot be defended.</source>
        <translation>Falta el motivo: sin él no se puede defender la palabra.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::RulesSheet</name>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>2nd hand</source>
        <translation>2.ª mano</translation>
    </message>
    <message>
        <source>Memory</source>
        <translation>Memoria</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Propia</translation>
    </message>
    <message>
        <source>not in this rule set</source>
        <translation>no está en estas reglas</translation>
    </message>
    <message>
        <source>in force: %1</source>
        <translation>vigente: %1</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Use it in the copy</source>
        <translation>Usar en la copia</translation>
    </message>
    <message>
        <source>New value</source>
        <translation>Valor nuevo</translation>
    </message>
    <message>
        <source>changed in the copy</source>
        <translation>cambiado en la copia</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <translation>%1 (%2, %3)</translation>
    </message>
    <message>
        <source>%1, changed in the copy</source>
        <translation>%1, cambiado en la copia</translation>
    </message>
    <message>
        <source>was not there</source>
        <translation>no estaba</translation>
    </message>
    <message>
        <source>was %1 %2</source>
        <translation>era %1 %2</translation>
    </message>
    <message>
        <source>was: %1; now: %2</source>
        <translation>antes: %1; ahora: %2</translation>
    </message>
    <message>
        <source>Rule set</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>rev. %1</source>
        <translation>rev. %1</translation>
    </message>
    <message>
        <source>Seal the copy and put it in force</source>
        <translation>Sellar la copia y ponerla en vigor</translation>
    </message>
    <message>
        <source>Touch a limit to change it in a copy</source>
        <translation>Toque un límite para cambiarlo en una copia</translation>
    </message>
    <message>
        <source>Seal: the book has no job yet</source>
        <translation>Sellar: la libreta aún no tiene obra</translation>
    </message>
    <message>
        <source>Seal: name the copy and its revision</source>
        <translation>Sellar: indique nombre y revisión de la copia</translation>
    </message>
    <message>
        <source>Seal: name the source of the changes</source>
        <translation>Sellar: indique la fuente de los cambios</translation>
    </message>
    <message>
        <source>Seal: say how good the source is</source>
        <translation>Sellar: indique qué tan buena es la fuente</translation>
    </message>
    <message>
        <source>Seal: the limits contradict each other</source>
        <translation>Sellar: los límites se contradicen</translation>
    </message>
</context>
<context>
    <name>groundcount::view::ScreenSettings</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation>Penumbra</translation>
    </message>
    <message>
        <source>Sound and buzz</source>
        <translation>Sonido y vibración</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>En silencio</translation>
    </message>
    <message>
        <source>The choice could not be kept in %1.</source>
        <translation>La opción no se pudo guardar en %1.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::SeatStep</name>
    <message>
        <source>Smooth</source>
        <translation>Lisa</translation>
    </message>
    <message>
        <source>Voids filled</source>
        <translation>Vacíos llenos</translation>
    </message>
    <message>
        <source>Sits flat</source>
        <translation>Asienta plano</translation>
    </message>
    <message>
        <source>It rocks</source>
        <translation>Se mece</translation>
    </message>
    <message>
        <source>Seal the seating</source>
        <translation>Sellar el asiento</translation>
    </message>
    <message>
        <source>Driving the rod: hands clear of the hammer&apos;s path, eyes and ears protected. Buried utilities are located first. Local rules and the licence govern.</source>
        <translation>Al hincar la varilla: manos fuera del recorrido del martillo, ojos y oídos protegidos. Antes se localizan los servicios enterrados. Rigen las normas locales y la licencia.</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Agujero</translation>
    </message>
    <message>
        <source>Use this depth</source>
        <translation>Usar esta profundidad</translation>
    </message>
    <message>
        <source>Hole depth</source>
        <translation>Profundidad del agujero</translation>
    </message>
    <message>
        <source>Type the depth of the hole</source>
        <translation>Escribir la profundidad del agujero</translation>
    </message>
    <message>
        <source>%1 in.</source>
        <translation>%1 in.</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Lift thickness is not in the book</source>
        <translation>El espesor de la capa no está en la libreta</translation>
    </message>
    <message>
        <source>Lift is %1 in. thick</source>
        <translation>La capa tiene %1 in. de espesor</translation>
    </message>
    <message>
        <source>Voids filled with native fines, at most %1 %2 deep</source>
        <translation>Huecos rellenos con finos del lugar, máximo %1 %2 de profundidad</translation>
    </message>
    <message>
        <source>At least %1 in., %2 %3 below the test</source>
        <translation>Al menos %1 in., %2 %3 bajo el ensayo</translation>
    </message>
    <message>
        <source>Seal: say how the surface is</source>
        <translation>Sellar: indique cómo está la superficie</translation>
    </message>
    <message>
        <source>Seal: does the gauge sit flat?</source>
        <translation>Sellar: ¿asienta plano el densímetro?</translation>
    </message>
    <message>
        <source>Seal: the gauge must not rock</source>
        <translation>Sellar: el densímetro no debe balancearse</translation>
    </message>
    <message>
        <source>Seal: the gauge has no calibrated depth</source>
        <translation>Sellar: el densímetro no tiene profundidad calibrada</translation>
    </message>
    <message>
        <source>Seal: choose the depth</source>
        <translation>Sellar: elija la profundidad</translation>
    </message>
    <message>
        <source>Seal: type the depth of the hole</source>
        <translation>Sellar: escriba la profundidad del agujero</translation>
    </message>
    <message>
        <source>Seal: hole and depth break the rule</source>
        <translation>Sellar: agujero y profundidad incumplen la regla</translation>
    </message>
</context>
<context>
    <name>groundcount::view::Session</name>
    <message>
        <source>You</source>
        <translation>Usted</translation>
    </message>
    <message>
        <source>You %1%2 ft</source>
        <translation>Usted %1%2 ft</translation>
    </message>
    <message>
        <source>No gauge in this book</source>
        <translation>Sin densímetro en esta libreta</translation>
    </message>
    <message>
        <source>Gauge not signed out</source>
        <translation>Densímetro no retirado</translation>
    </message>
    <message>
        <source>Calibration missing</source>
        <translation>Falta la calibración</translation>
    </message>
    <message>
        <source>Calibration out of date</source>
        <translation>Calibración vencida</translation>
    </message>
    <message>
        <source>Leak test found a leak</source>
        <translation>La prueba de fugas halló una fuga</translation>
    </message>
    <message>
        <source>Leak test out of date</source>
        <translation>Prueba de fugas vencida</translation>
    </message>
    <message>
        <source>Standard counts missing</source>
        <translation>Faltan conteos estándar</translation>
    </message>
    <message>
        <source>Standard counts not accepted</source>
        <translation>Conteos estándar no aceptados</translation>
    </message>
    <message>
        <source>The receiver repeats the same position: do not rely on it.</source>
        <translation>El receptor repite la misma posición: no se fíe de ella.</translation>
    </message>
    <message>
        <source>The position jumped farther than anyone moves: wait until it stands still.</source>
        <translation>La posición saltó más lejos de lo que nadie se mueve: espere a que se quede quieta.</translation>
    </message>
    <message>
        <source>Last seen here</source>
        <translation>Visto aquí por última vez</translation>
    </message>
</context>
<context>
    <name>groundcount::view::SheetRecord</name>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Distancias libres</translation>
    </message>
    <message>
        <source>Seating</source>
        <translation>Asiento</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anulado</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>a person not in this book</source>
        <translation>una persona que no está en esta libreta</translation>
    </message>
    <message>
        <source>because: %1</source>
        <translation>porque: %1</translation>
    </message>
    <message>
        <source>amended because: %1</source>
        <translation>enmendado porque: %1</translation>
    </message>
    <message>
        <source>replaced later</source>
        <translation>reemplazado después</translation>
    </message>
    <message>
        <source>1 record</source>
        <translation>1 registro</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 registros</translation>
    </message>
    <message>
        <source>%1 was amended twice, apart from each other. The later one is shown. Choose which one speaks; both stay in the book.</source>
        <translation>%1 se enmendó dos veces, por separado. Se muestra la enmienda posterior. Elija cuál vale; ambas quedan en la libreta.</translation>
    </message>
    <message>
        <source>Keep the one of %1</source>
        <translation>Conservar la de %1</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>La nota está vacía.</translation>
    </message>
    <message>
        <source>Only a file of this device can be attached.</source>
        <translation>Solo se puede adjuntar un archivo de este dispositivo.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::SiteFileSheet</name>
    <message>
        <source>ft, international</source>
        <translation>ft, internacional</translation>
    </message>
    <message>
        <source>ft, US survey</source>
        <translation>ft, US survey</translation>
    </message>
    <message>
        <source>metre</source>
        <translation>metro</translation>
    </message>
    <message>
        <source>Tests per lift</source>
        <translation>Ensayos por capa</translation>
    </message>
    <message>
        <source>as the specification asks</source>
        <translation>como pide la especificación</translation>
    </message>
    <message>
        <source>Use this number</source>
        <translation>Usar este número</translation>
    </message>
    <message>
        <source>Begin station</source>
        <translation>Estación inicial</translation>
    </message>
    <message>
        <source>station of the line&apos;s first corner</source>
        <translation>estación del primer vértice de la línea</translation>
    </message>
    <message>
        <source>Use this station</source>
        <translation>Usar esta estación</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>The lots of the file need a reference test; choose one.</source>
        <translation>Los lotes del archivo necesitan un ensayo de referencia; elija uno.</translation>
    </message>
    <message>
        <source>Tests per lift must be a whole number from 1 to 1000; it is &quot;%1&quot;.</source>
        <translation>Los ensayos por capa deben ser un entero de 1 a 1000; es «%1».</translation>
    </message>
    <message>
        <source>%1 is taken over: its things are sealed and stand on the map.</source>
        <translation>%1 está incorporado: sus elementos están sellados y figuran en el mapa.</translation>
    </message>
    <message>
        <source>line of 1 element</source>
        <translation>eje de 1 elemento</translation>
    </message>
    <message>
        <source>line of %1 elements</source>
        <translation>eje de %1 elementos</translation>
    </message>
    <message>
        <source>1 area</source>
        <translation>1 área</translation>
    </message>
    <message>
        <source>%1 areas</source>
        <translation>%1 áreas</translation>
    </message>
    <message>
        <source>1 line</source>
        <translation>1 línea</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 líneas</translation>
    </message>
    <message>
        <source>1 point</source>
        <translation>1 punto</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>Alignment</source>
        <translation>Eje</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Pipe</source>
        <translation>Tubería</translation>
    </message>
    <message>
        <source>Structure</source>
        <translation>Estructura</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitido</translation>
    </message>
    <message>
        <source>Site file</source>
        <translation>Archivo de obra</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Formato</translation>
    </message>
    <message>
        <source>Coordinate system</source>
        <translation>Sistema de coordenadas</translation>
    </message>
    <message>
        <source>the file does not say</source>
        <translation>el archivo no lo dice</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Extent</source>
        <translation>Extensión</translation>
    </message>
    <message>
        <source>north %1 to %2, east %3 to %4</source>
        <translation>norte %1 a %2, este %3 a %4</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>todavía sin decir</translation>
    </message>
    <message>
        <source>The job&apos;s own system</source>
        <translation>El sistema de la obra</translation>
    </message>
    <message>
        <source>The international and the US survey foot lie %1 ft apart at these coordinates. The drawing&apos;s author knows which it is.</source>
        <translation>El pie internacional y el US survey se separan %1 ft en estas coordenadas. El autor del dibujo sabe cuál es.</translation>
    </message>
    <message>
        <source>Without an answer: the unit of the system, %1.</source>
        <translation>Sin respuesta: la unidad del sistema, %1.</translation>
    </message>
    <message>
        <source>Its middle lies %1 from the begin of the job&apos;s line.</source>
        <translation>Su centro está a %1 del inicio del eje de la obra.</translation>
    </message>
    <message>
        <source>The begin of the job&apos;s line lies within it.</source>
        <translation>El inicio del eje de la obra queda dentro.</translation>
    </message>
    <message>
        <source>The file lies %1 from the job: is the coordinate system or the unit another one?</source>
        <translation>El archivo está a %1 de la obra: ¿es otro el sistema de coordenadas o la unidad?</translation>
    </message>
    <message>
        <source>The book already has a thing called &quot;%1&quot;; sealed again, it stands there twice.</source>
        <translation>El libro ya tiene un elemento llamado «%1»; sellado otra vez, figura dos veces.</translation>
    </message>
    <message>
        <source>The job has a line already, and its lots name none: with a second line their stations no longer say which one they mean.</source>
        <translation>La obra ya tiene un eje y sus lotes no nombran ninguno: con un segundo eje sus estaciones ya no dicen a cuál se refieren.</translation>
    </message>
    <message>
        <source>Seal 1 thing</source>
        <translation>Sellar 1 elemento</translation>
    </message>
    <message>
        <source>Seal %1 things</source>
        <translation>Sellar %1 elementos</translation>
    </message>
    <message>
        <source>Reading the file</source>
        <translation>Se lee el archivo</translation>
    </message>
    <message>
        <source>Choose a file first</source>
        <translation>Primero elija un archivo</translation>
    </message>
    <message>
        <source>Say the coordinate system first</source>
        <translation>Primero diga el sistema de coordenadas</translation>
    </message>
    <message>
        <source>Say the unit first</source>
        <translation>Primero diga la unidad</translation>
    </message>
    <message>
        <source>The file does not fit the job</source>
        <translation>El archivo no encaja en la obra</translation>
    </message>
    <message>
        <source>Say what a layer is first</source>
        <translation>Primero diga qué es un nivel</translation>
    </message>
    <message>
        <source>Choose the reference test first</source>
        <translation>Primero elija el ensayo de referencia</translation>
    </message>
    <message>
        <source>Type the tests per lift first</source>
        <translation>Primero anote los ensayos por capa</translation>
    </message>
    <message>
        <source>Type the begin station first</source>
        <translation>Primero anote la estación inicial</translation>
    </message>
    <message>
        <source>At most %1 things at once; groundbook takes more</source>
        <translation>Como máximo %1 elementos a la vez; groundbook admite más</translation>
    </message>
</context>
<context>
    <name>groundcount::view::StabilityTest</name>
    <message>
        <source>rule set, %1, %2</source>
        <translation>reglas, %1, %2</translation>
    </message>
    <message>
        <source>computed: nine sound gauges of ten lie inside; the rule set gives no band</source>
        <translation>calculado: nueve de diez densímetros en buen estado quedan dentro; las reglas no dan un intervalo</translation>
    </message>
    <message>
        <source>Stability test</source>
        <translation>Ensayo de estabilidad</translation>
    </message>
    <message>
        <source>Use these counts</source>
        <translation>Usar estos conteos</translation>
    </message>
    <message>
        <source>Density %1</source>
        <translation>Densidad %1</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>Moisture %1</source>
        <translation>Humedad %1</translation>
    </message>
    <message>
        <source>%1 of %2 typed</source>
        <translation>%1 de %2 escritos</translation>
    </message>
    <message>
        <source>s %1 of mean %2: ratio %3, %4</source>
        <translation>s %1 de media %2: razón %3, %4</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>above: noise</source>
        <translation>por encima: ruido</translation>
    </message>
    <message>
        <source>below: not random</source>
        <translation>por debajo: no aleatorio</translation>
    </message>
    <message>
        <source>ratio %1 density, %2 moisture</source>
        <translation>razón %1 densidad, %2 humedad</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>no cumple</translation>
    </message>
    <message>
        <source>Ratio %1 to %2 (%3)</source>
        <translation>Razón %1 a %2 (%3)</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Stable</source>
        <translation>Estable</translation>
    </message>
    <message>
        <source>Not stable</source>
        <translation>No estable</translation>
    </message>
    <message>
        <source>Take the standard counts again.</source>
        <translation>Repita los conteos estándar.</translation>
    </message>
    <message>
        <source>One failure: repeat it, a sound gauge fails now and then. Two in a row: out of service, to the maker or a licensed service.</source>
        <translation>Si no cumple una vez: repetir; un densímetro en buen estado a veces no cumple. Dos veces seguidas: fuera de servicio, al fabricante o a un servicio con licencia.</translation>
    </message>
    <message>
        <source>Seal the stability test</source>
        <translation>Sellar el ensayo de estabilidad</translation>
    </message>
    <message>
        <source>Seal the failed test</source>
        <translation>Sellar el ensayo que no cumple</translation>
    </message>
    <message>
        <source>Seal: the book has no gauge yet</source>
        <translation>Sellar: la libreta aún no tiene densímetro</translation>
    </message>
    <message>
        <source>Seal: type the gauge&apos;s prescale in its papers first</source>
        <translation>Sellar: escriba primero la preescala del densímetro en sus papeles</translation>
    </message>
    <message>
        <source>Seal: type %1 counts of each</source>
        <translation>Sellar: escriba %1 conteos de cada uno</translation>
    </message>
</context>
<context>
    <name>groundcount::view::StandardCounts</name>
    <message>
        <source>Single counts</source>
        <translation>Conteos sueltos</translation>
    </message>
    <message>
        <source>One automatic</source>
        <translation>Uno automático</translation>
    </message>
    <message>
        <source>Stand back while it counts, keep people and vehicles out, and never leave the gauge unattended. The licence, local rules and the manufacturer&apos;s instructions govern.</source>
        <translation>Aléjese durante el conteo, mantenga fuera a personas y vehículos, y nunca deje el densímetro sin vigilancia. Rigen la licencia, las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Automatic count</source>
        <translation>Conteo automático</translation>
    </message>
    <message>
        <source>Standard counts</source>
        <translation>Conteos estándar</translation>
    </message>
    <message>
        <source>Use these counts</source>
        <translation>Usar estos conteos</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>conteos</translation>
    </message>
    <message>
        <source>Newest first</source>
        <translation>El más reciente primero</translation>
    </message>
    <message>
        <source>%1 is far from the %2 expected. Is it the other count, or a figure too many?</source>
        <translation>%1 está lejos de los %2 esperados. ¿Es el otro conteo o sobra una cifra?</translation>
    </message>
    <message>
        <source>Type at least the newest pair</source>
        <translation>Escriba al menos el par más reciente</translation>
    </message>
    <message>
        <source>Density %1, moisture %2</source>
        <translation>Densidad %1, humedad %2</translation>
    </message>
    <message>
        <source>%1 of %2 typed</source>
        <translation>%1 de %2 escritos</translation>
    </message>
    <message>
        <source>Expected spread not known: the gauge&apos;s prescale is not in its record.</source>
        <translation>Dispersión esperada desconocida: la preescala del densímetro no está en su registro.</translation>
    </message>
    <message>
        <source>Counting alone scatters by %1 % (one standard deviation).</source>
        <translation>El conteo por sí solo varía %1 % (una desviación estándar).</translation>
    </message>
    <message>
        <source>The limit is less than twice that: a sound gauge will fail it often.</source>
        <translation>El límite es menos del doble de eso: un densímetro en buen estado lo incumplirá a menudo.</translation>
    </message>
    <message>
        <source>%1 % from %2, ±%3 %</source>
        <translation>%1 % respecto a %2, ±%3 %</translation>
    </message>
    <message>
        <source>Warmed up</source>
        <translation>Ya calentado</translation>
    </message>
    <message>
        <source>Block on dry, level ground</source>
        <translation>Bloque en suelo seco y nivelado</translation>
    </message>
    <message>
        <source>Other gauges away</source>
        <translation>Otros densímetros lejos</translation>
    </message>
    <message>
        <source>Walls and vehicles away</source>
        <translation>Muros y vehículos lejos</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>Requiere %1</translation>
    </message>
    <message>
        <source>Gauge seated firmly, right way round on it</source>
        <translation>Densímetro bien asentado, en el sentido correcto</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>all four seen</source>
        <translation>los cuatro vistos</translation>
    </message>
    <message>
        <source>%1 of 4 seen</source>
        <translation>%1 de 4 vistos</translation>
    </message>
    <message>
        <source>Seal: %1 things not seen yet</source>
        <translation>Sellar: %1 puntos aún sin ver</translation>
    </message>
    <message>
        <source>Counts of the log: change</source>
        <translation>Conteos de la bitácora: cambiar</translation>
    </message>
    <message>
        <source>Type counts of the log</source>
        <translation>Escribir conteos de la bitácora</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>1. Look again</source>
        <translation>1. Mirar de nuevo</translation>
    </message>
    <message>
        <source>Block dry and level, gauge seated, right way round</source>
        <translation>Bloque seco y nivelado, densímetro asentado, en el sentido correcto</translation>
    </message>
    <message>
        <source>2. Other gauges, walls, vehicles</source>
        <translation>2. Otros densímetros, muros, vehículos</translation>
    </message>
    <message>
        <source>Farther off than the rule asks</source>
        <translation>Más lejos de lo que pide la regla</translation>
    </message>
    <message>
        <source>3. Repeat the set</source>
        <translation>3. Repetir la serie</translation>
    </message>
    <message>
        <source>%1 refused today</source>
        <translation>Rechazos hoy: %1</translation>
    </message>
    <message>
        <source>Once; two in a row is a fault</source>
        <translation>Una vez; dos seguidas son una falla</translation>
    </message>
    <message>
        <source>4. Refused again: stability test</source>
        <translation>4. Otro rechazo: prueba de estabilidad</translation>
    </message>
    <message>
        <source>Then out of service if that fails</source>
        <translation>Y fuera de servicio si no la cumple</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>serie %1</translation>
    </message>
    <message>
        <source>Nothing typed yet</source>
        <translation>Aún no hay nada escrito</translation>
    </message>
    <message>
        <source>%1 of %2 counts typed</source>
        <translation>%1 de %2 conteos escritos</translation>
    </message>
    <message>
        <source>Type the counts</source>
        <translation>Escribir los conteos</translation>
    </message>
    <message>
        <source>Change the counts</source>
        <translation>Cambiar los conteos</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Take a second set</source>
        <translation>Tomar una segunda serie</translation>
    </message>
    <message>
        <source>Not accepted</source>
        <translation>No aceptado</translation>
    </message>
    <message>
        <source>Cannot be judged</source>
        <translation>No se puede evaluar</translation>
    </message>
    <message>
        <source>Accepted today at %1</source>
        <translation>Aceptado hoy a las %1</translation>
    </message>
    <message>
        <source>Not accepted today at %1</source>
        <translation>No aceptado hoy a las %1</translation>
    </message>
    <message>
        <source>%1 % from %2</source>
        <translation>%1 % respecto a %2</translation>
    </message>
    <message>
        <source>Seal the standard counts</source>
        <translation>Sellar los conteos estándar</translation>
    </message>
    <message>
        <source>Seal, used with a reason</source>
        <translation>Sellar, uso con motivo</translation>
    </message>
    <message>
        <source>Seal the refused set</source>
        <translation>Sellar la serie rechazada</translation>
    </message>
    <message>
        <source>Seal: the book has no gauge yet</source>
        <translation>Sellar: la libreta aún no tiene densímetro</translation>
    </message>
    <message>
        <source>Seal: choose the gauge</source>
        <translation>Sellar: elegir el densímetro</translation>
    </message>
    <message>
        <source>Seal: type %1 counts of each</source>
        <translation>Sellar: escriba %1 conteos de cada uno</translation>
    </message>
</context>
<context>
    <name>groundcount::view::StandingWords</name>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>Accepted with exception</source>
        <translation>Aceptado con excepción</translation>
    </message>
    <message>
        <source>check overridden</source>
        <translation>control anulado</translation>
    </message>
    <message>
        <source>amended after the verdict</source>
        <translation>enmendado tras el veredicto</translation>
    </message>
    <message>
        <source>papers expired</source>
        <translation>documentos caducados</translation>
    </message>
    <message>
        <source>standard count out</source>
        <translation>conteo estándar fuera</translation>
    </message>
    <message>
        <source>clearance not met</source>
        <translation>distancia no cumplida</translation>
    </message>
    <message>
        <source>position poor</source>
        <translation>posición deficiente</translation>
    </message>
    <message>
        <source>duplicate reading</source>
        <translation>lectura duplicada</translation>
    </message>
    <message>
        <source>impossible time</source>
        <translation>hora imposible</translation>
    </message>
    <message>
        <source>same counts twice</source>
        <translation>mismos conteos dos veces</translation>
    </message>
    <message>
        <source>retest elsewhere</source>
        <translation>repetición en otro lugar</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>clearances</source>
        <translation>distancias</translation>
    </message>
    <message>
        <source>seating</source>
        <translation>asiento</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>muestra</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>random sites drawn</source>
        <translation>sitios sorteados</translation>
    </message>
    <message>
        <source>requirement</source>
        <translation>requisito</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>capa</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>reference test</source>
        <translation>ensayo de referencia</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 sq ft</source>
        <translation>%1 ft²</translation>
    </message>
    <message>
        <source>nothing tested</source>
        <translation>nada ensayado</translation>
    </message>
    <message>
        <source>under way</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>failure open</source>
        <translation>fallo abierto</translation>
    </message>
    <message>
        <source>ready for review</source>
        <translation>listo para revisar</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>accepted with exception</source>
        <translation>aceptado con excepción</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>changed since accepted</source>
        <translation>cambiado desde la aceptación</translation>
    </message>
    <message>
        <source>%1 by %2, %3</source>
        <translation>%1 por %2, %3</translation>
    </message>
    <message>
        <source>a person not in this book</source>
        <translation>una persona que no está en esta libreta</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) since</source>
        <translation>
            <numerusform>%n registro desde entonces</numerusform>
            <numerusform>%n registros desde entonces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n falla abierta</numerusform>
            <numerusform>%n fallas abiertas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) owed</source>
        <translation>
            <numerusform>%n ensayo pendiente</numerusform>
            <numerusform>%n ensayos pendientes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) not finished</source>
        <translation>
            <numerusform>%n ensayo sin terminar</numerusform>
            <numerusform>%n ensayos sin terminar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) amended twice apart</source>
        <translation>
            <numerusform>%n ensayo corregido dos veces por separado</numerusform>
            <numerusform>%n ensayos corregidos dos veces por separado</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing is tested</source>
        <translation>no hay nada ensayado</translation>
    </message>
    <message numerus="yes">
        <source>all %n test(s) made, no failure open</source>
        <translation>
            <numerusform>%n ensayo hecho, ningún fallo abierto</numerusform>
            <numerusform>los %n ensayos hechos, ningún fallo abierto</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
</context>
<context>
    <name>groundcount::view::TestSheet</name>
    <message>
        <source>No field book is open.</source>
        <translation>No hay libreta de campo abierta.</translation>
    </message>
    <message>
        <source>This drawn site is not in the book.</source>
        <translation>Este sitio sorteado no está en la libreta.</translation>
    </message>
    <message>
        <source>The test to be retested is not in the book.</source>
        <translation>El ensayo por reensayar no está en la libreta.</translation>
    </message>
    <message>
        <source>Seal: place first</source>
        <translation>Sellar: primero el lugar</translation>
    </message>
    <message>
        <source>Seal: settle the hazards first</source>
        <translation>Sellar: primero resolver los peligros</translation>
    </message>
    <message>
        <source>Seal: seat the gauge first</source>
        <translation>Sellar: asentar antes el densímetro</translation>
    </message>
    <message>
        <source>Seal: count first</source>
        <translation>Sellar: contar antes</translation>
    </message>
    <message>
        <source>Seal: the sample first</source>
        <translation>Sellar: primero la muestra</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Libre</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Asiento</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Conteo</translation>
    </message>
    <message>
        <source>Dig</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Test %1</source>
        <translation>Ensayo %1</translation>
    </message>
    <message>
        <source>Lot %1, lift %2</source>
        <translation>Lote %1, capa %2</translation>
    </message>
    <message>
        <source>%1 is sealed</source>
        <translation>%1: sellado</translation>
    </message>
    <message>
        <source>Amending: %1</source>
        <translation>Enmienda: %1</translation>
    </message>
    <message>
        <source>Void: %1</source>
        <translation>Anulado: %1</translation>
    </message>
    <message>
        <source>Amend: %1</source>
        <translation>Enmendar: %1</translation>
    </message>
    <message>
        <source>What was sealed stays in the book beside the new record, with your reason. The verdict is made again.</source>
        <translation>Lo sellado queda en la libreta junto al nuevo registro, con su motivo. El veredicto se hace de nuevo.</translation>
    </message>
    <message>
        <source>Amend it</source>
        <translation>Enmendarlo</translation>
    </message>
    <message>
        <source>Void test %1</source>
        <translation>Anular el ensayo %1</translation>
    </message>
    <message>
        <source>The test stays in the book as void, with your reason. Its number is not used again, and it decides nothing.</source>
        <translation>El ensayo queda en la libreta como anulado, con su motivo. Su número no se reutiliza y no decide nada.</translation>
    </message>
    <message>
        <source>Void the test</source>
        <translation>Anular el ensayo</translation>
    </message>
    <message>
        <source>Say why. The reason is sealed with it.</source>
        <translation>Indique por qué. El motivo se sella con él.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::TestsView</name>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Every lot</source>
        <translation>Todos los lotes</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>All tests</source>
        <translation>Todos los ensayos</translation>
    </message>
</context>
<context>
    <name>groundcount::view::TypingGuard</name>
    <message>
        <source>The decimal point may be off: last time it was %1.</source>
        <translation>El punto decimal puede estar mal: la última vez fue %1.</translation>
    </message>
    <message>
        <source>Two digits may be swapped: last time it was %1.</source>
        <translation>Puede que dos cifras estén cambiadas: la última vez fue %1.</translation>
    </message>
</context>
<context>
    <name>groundcount::view::VerdictStep</name>
    <message>
        <source>Seal the verdict</source>
        <translation>Sellar el veredicto</translation>
    </message>
    <message>
        <source>Seal: the verdict is refused</source>
        <translation>Sellar: el veredicto se rechaza</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Cumple</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>No cumple</translation>
    </message>
    <message>
        <source>Information only</source>
        <translation>Solo informativo</translation>
    </message>
    <message>
        <source>Provisional</source>
        <translation>Provisional</translation>
    </message>
    <message>
        <source>Maximum corrected for %1 % coarse particles</source>
        <translation>Máximo corregido por %1 % de partículas gruesas</translation>
    </message>
    <message>
        <source>%1 % coarse particles, no correction</source>
        <translation>%1 % de partículas gruesas, sin corrección</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>Requiere %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>optimum %1</source>
        <translation>óptimo %1</translation>
    </message>
    <message>
        <source>Fill the hole</source>
        <translation>Rellenar el hoyo</translation>
    </message>
    <message>
        <source>With the same material, tamped</source>
        <translation>Con el mismo material, apisonado</translation>
    </message>
    <message>
        <source>Nothing: retest %1 passed</source>
        <translation>Nada: el reensayo %1 cumple</translation>
    </message>
    <message>
        <source>This failure is closed and stays in the book</source>
        <translation>Esta falla está cerrada y queda en la libreta</translation>
    </message>
    <message>
        <source>Retest %1, same place and lift</source>
        <translation>Reensayo %1, mismo lugar y capa</translation>
    </message>
    <message>
        <source>Retest, same place and lift</source>
        <translation>Reensayo, mismo lugar y capa</translation>
    </message>
    <message>
        <source>The lift stays open until it passes</source>
        <translation>La capa sigue abierta hasta que cumpla</translation>
    </message>
    <message>
        <source>Weigh the sample</source>
        <translation>Pesar la muestra</translation>
    </message>
    <message>
        <source>Bring the moisture</source>
        <translation>Traer la humedad</translation>
    </message>
    <message>
        <source>Then open this test again and seal its final verdict</source>
        <translation>Luego abrir de nuevo este ensayo y sellar su veredicto final</translation>
    </message>
    <message>
        <source>Test again where the rules can be kept</source>
        <translation>Ensayar de nuevo donde se puedan cumplir las reglas</translation>
    </message>
    <message>
        <source>A check was overridden: this test decides nothing</source>
        <translation>Una comprobación se omitió por excepción: este ensayo no decide nada</translation>
    </message>
    <message>
        <source>Dry it back, then roll again</source>
        <translation>Secar y volver a pasar el rodillo</translation>
    </message>
    <message>
        <source>%1 points above the wet limit of %2 %</source>
        <translation>%1 puntos sobre el límite húmedo de %2 %</translation>
    </message>
    <message>
        <source>Add water and mix, then roll again</source>
        <translation>Agregar agua, mezclar y volver a pasar el rodillo</translation>
    </message>
    <message>
        <source>%1 points below the dry limit of %2 %</source>
        <translation>%1 puntos bajo el límite seco de %2 %</translation>
    </message>
    <message>
        <source>Roll again</source>
        <translation>Volver a pasar el rodillo</translation>
    </message>
    <message>
        <source>%1 points below the %2 % needed</source>
        <translation>%1 puntos bajo el %2 % requerido</translation>
    </message>
    <message>
        <source>Ask the engineer</source>
        <translation>Consultar al ingeniero</translation>
    </message>
    <message>
        <source>%1 points above the greatest allowed %2 %</source>
        <translation>%1 puntos sobre el máximo permitido de %2 %</translation>
    </message>
    <message>
        <source>No drawn site is owed any more</source>
        <translation>Ya no hay sitios sorteados pendientes</translation>
    </message>
    <message>
        <source>Go to site %1</source>
        <translation>Ir al sitio %1</translation>
    </message>
    <message>
        <source>%1 ft %2, %3</source>
        <translation>%1 ft %2, %3</translation>
    </message>
</context>
</TS>
