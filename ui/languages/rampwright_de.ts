<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>Core</name>
    <message>
        <source>  into forward motion</source>
        <translation>  in die Fahrt</translation>
    </message>
    <message>
        <source>  into pitching</source>
        <translation>  ins Nicken</translation>
    </message>
    <message>
        <source>  into wheel spin</source>
        <translation>  in die Drehung der Räder</translation>
    </message>
    <message>
        <source>  to rolling</source>
        <translation>  ans Rollen</translation>
    </message>
    <message>
        <source>  to scrubbing treads</source>
        <translation>  an schräg laufende Räder</translation>
    </message>
    <message>
        <source>  to the air</source>
        <translation>  an die Luft</translation>
    </message>
    <message>
        <source>  to the axles</source>
        <translation>  an die Achsen</translation>
    </message>
    <message>
        <source>  to the guide rail</source>
        <translation>  an die Führungsschiene</translation>
    </message>
    <message>
        <source>  to the hubs</source>
        <translation>  an die Naben</translation>
    </message>
    <message>
        <source> Local rules and the adult in charge decide.</source>
        <translation> Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>&quot;{piece}&quot; lies in it and is locked</source>
        <translation>&quot;{piece}&quot; liegt darin und ist fest</translation>
    </message>
    <message>
        <source>&quot;{unit}&quot; measures {other}, not {quantity}</source>
        <translation>&quot;{unit}&quot; misst {other}, nicht {quantity}</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is no kind of template file</source>
        <translation>&quot;{what}&quot; ist keine Art Schablonendatei</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is no way of holding a weight that the table knows</source>
        <translation>&quot;{what}&quot; ist keine Art, ein Gewicht zu halten, die die Tabelle kennt</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is not a date</source>
        <translation>&quot;{what}&quot; ist kein Datum</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is not a time of day</source>
        <translation>&quot;{what}&quot; ist keine Uhrzeit</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is not in the table of materials</source>
        <translation>&quot;{what}&quot; steht nicht in der Tabelle der Materialien</translation>
    </message>
    <message>
        <source>&quot;{what}&quot; is on the shelf already</source>
        <translation>&quot;{what}&quot; liegt schon im Regal</translation>
    </message>
    <message>
        <source>&quot;{word}&quot; is not a number</source>
        <translation>&quot;{word}&quot; ist keine Zahl</translation>
    </message>
    <message>
        <source>&quot;{word}&quot; is not a unit for {quantity}</source>
        <translation>&quot;{word}&quot; ist keine Einheit für {quantity}</translation>
    </message>
    <message>
        <source>(hub arm / wheel radius × mean load, wheel by wheel) × distance; arm = friction × side load × 2/3 (r2³ − r1³) / (r2² − r1²)</source>
        <translation>(Nabenhebel / Radradius × mittlere Last, Rad für Rad) × Weg; Hebel = Reibung × Seitenlast × 2/3 (r2³ − r1³) / (r2² − r1²)</translation>
    </message>
    <message>
        <source>(mass + the scale&apos;s error), rounded to whole divisions</source>
        <translation>(Masse + Fehler der Waage), auf ganze Schritte gerundet</translation>
    </message>
    <message>
        <source>(rolling coefficient × mean load, wheel by wheel) × distance</source>
        <translation>(Rollwiderstandsbeiwert × mittlere Last, Rad für Rad) × Weg</translation>
    </message>
    <message>
        <source>(share of the weight at that place&apos;s slope + curvature, air and wheels × speed² + air stirred by the wheels × speed^1.5 + lever of the guide × its force) / gravity, where that is smallest; no sum where an axle hangs</source>
        <translation>(Anteil des Gewichts beim Gefälle dort + Krümmung, Luft und Räder × Geschwindigkeit² + von den Rädern gerührte Luft × Geschwindigkeit^1.5 + Hebel der Führung × ihre Kraft) / Erdbeschleunigung, wo das am kleinsten ist; keine Summe, wo eine Achse hängt</translation>
    </message>
    <message>
        <source>(side force per load × sin(toe), wheel by wheel × mean load) × distance</source>
        <translation>(Seitenkraft je Last × sin(Spur), Rad für Rad × mittlere Last) × Weg</translation>
    </message>
    <message>
        <source>(½ × air density × drag coefficient × frontal area × mean of speed² + what the rear and the front wheels stir × mean of speed^1.5) × distance; the means are summed up along the heat</source>
        <translation>(½ × Luftdichte × Widerstandsbeiwert × Stirnfläche × Mittel von Geschwindigkeit² + was Hinter- und Vorderräder rühren × Mittel von Geschwindigkeit^1.5) × Weg; die Mittel sind entlang des Laufs summiert</translation>
    </message>
    <message>
        <source>19 heats of 20 between</source>
        <translation>19 von 20 Läufen zwischen</translation>
    </message>
    <message>
        <source>A lane nobody has measured</source>
        <translation>Eine Bahn, die niemand gemessen hat</translation>
    </message>
    <message>
        <source>A long lane of planed boards with a wide, well eased transition arc and few joints. Invented.</source>
        <translation>Eine lange Bahn aus gehobelten Brettern mit einem weiten, gut übergehenden Bogen und wenigen Fugen. Erfunden.</translation>
    </message>
    <message>
        <source>A ramp for a table and a floor: a steep short fall, a tight bend, four metres of level. Invented.</source>
        <translation>Eine Rampe für Tisch und Boden: ein kurzer steiler Fall, ein enger Bogen, vier Meter Ebene. Erfunden.</translation>
    </message>
    <message>
        <source>A rule of this race is broken.</source>
        <translation>Eine Regel dieses Rennens ist gebrochen.</translation>
    </message>
    <message>
        <source>A rule of this race is broken: the limit is {limit*}, the car has {measured*}.</source>
        <translation>Eine Regel dieses Rennens ist gebrochen: die Grenze ist {limit*}, der Wagen hat {measured*}.</translation>
    </message>
    <message>
        <source>A weight passes the wheel with only {clearance_mm} to spare.</source>
        <translation>Ein Gewicht kommt am Rad mit nur {clearance_mm} Abstand vorbei.</translation>
    </message>
    <message>
        <source>A wheel may be raised off the lane.</source>
        <translation>Ein Rad darf von der Bahn abgehoben sein.</translation>
    </message>
    <message>
        <source>A wheel may be set to steer.</source>
        <translation>Ein Rad darf auf Lenken gestellt sein.</translation>
    </message>
    <message>
        <source>A wheel that points a little aside is dragged sideways as it rolls: {energy}, and {time} of the heat.</source>
        <translation>Ein Rad, das etwas zur Seite zeigt, wird beim Rollen seitwärts geschleift: {energy}, und {time} des Laufs.</translation>
    </message>
    <message>
        <source>A worse one, {scale}, {verdict}.</source>
        <translation>Eine schlechtere, {scale}, {verdict}.</translation>
    </message>
    <message>
        <source>Above the lane the car is no higher than this.</source>
        <translation>Über der Bahn ist der Wagen nicht höher als dies.</translation>
    </message>
    <message>
        <source>Add ballast</source>
        <translation>Ballast hinzufügen</translation>
    </message>
    <message>
        <source>Add cut</source>
        <translation>Ausschnitt hinzufügen</translation>
    </message>
    <message>
        <source>Add plan point</source>
        <translation>Punkt des oberen Umrisses hinzufügen</translation>
    </message>
    <message>
        <source>Add profile point</source>
        <translation>Punkt des Seitenumrisses hinzufügen</translation>
    </message>
    <message>
        <source>Add run</source>
        <translation>Lauf hinzufügen</translation>
    </message>
    <message>
        <source>Add to shelf</source>
        <translation>Ins Regal legen</translation>
    </message>
    <message>
        <source>Add to the lane</source>
        <translation>Zur Bahn hinzufügen</translation>
    </message>
    <message>
        <source>Add {add_g} of weight at the balance point, as much as the scale lets pass.</source>
        <translation>Gib am Schwerpunkt {add_g} Gewicht dazu, so viel, wie die Waage durchlässt.</translation>
    </message>
    <message>
        <source>Add {mass} of putty in {cut}</source>
        <translation>Gib {mass} Knete in {cut} dazu</translation>
    </message>
    <message>
        <source>Add {mass} that no cut has room for</source>
        <translation>Gib {mass} dazu, für die kein Ausschnitt Platz hat</translation>
    </message>
    <message>
        <source>Align {what}</source>
        <translation>Ausrichten: {what}</translation>
    </message>
    <message>
        <source>American basswood</source>
        <translation>Amerikanische Linde</translation>
    </message>
    <message>
        <source>An adult does the drilling. Clamp the block, never hold it by hand; goggles on; no gloves, hair or sleeves near the turning bit; stop before clearing chips. Local rules and the adult in charge decide.</source>
        <translation>Ein Erwachsener bohrt. Spann den Klotz ein, halt ihn nie mit der Hand; Schutzbrille auf; keine Handschuhe, Haare oder Ärmel nahe am drehenden Bohrer; anhalten, bevor Späne entfernt werden. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>An adult does the sawing. Clamp the block, keep hands behind the blade, wear goggles, tie back hair and sleeves. Local rules and the adult in charge decide.</source>
        <translation>Ein Erwachsener sägt. Spann den Klotz ein, halt die Hände hinter dem Blatt, trag eine Schutzbrille, bind Haare und Ärmel zurück. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>An axle runs through this weight, {overlap_mm3} of it: one of them has to move.</source>
        <translation>Durch dieses Gewicht läuft eine Achse, durch {overlap_mm3} davon: eins von beiden muss weichen.</translation>
    </message>
    <message>
        <source>Ask the builder.</source>
        <translation>Frag, wer ihn gebaut hat.</translation>
    </message>
    <message>
        <source>Ask the builder; touch an axle with a clean cloth.</source>
        <translation>Frag, wer ihn gebaut hat; berühr eine Achse mit einem sauberen Tuch.</translation>
    </message>
    <message>
        <source>Ask to see the drawing.</source>
        <translation>Lass dir die Zeichnung zeigen.</translation>
    </message>
    <message>
        <source>Ask what the weights are; look at each that can be seen.</source>
        <translation>Frag, was die Gewichte sind; sieh dir jedes an, das zu sehen ist.</translation>
    </message>
    <message>
        <source>At least so many wheels stand on a flat table.</source>
        <translation>Mindestens so viele Räder stehen auf einem ebenen Tisch.</translation>
    </message>
    <message>
        <source>At the finish it does {speed}: what the fall gave, less what was rubbed and blown away, is all speed.</source>
        <translation>Im Ziel hat er {speed}: was der Fall gab, weniger was verrieben und verweht ist, ist alles Geschwindigkeit.</translation>
    </message>
    <message>
        <source>At {temperature} the air weighs {density}: warm, damp air is lighter and brakes less.</source>
        <translation>Bei {temperature} wiegt die Luft {density}: warme, feuchte Luft ist leichter und bremst weniger.</translation>
    </message>
    <message>
        <source>Axles are as they come: not filed or polished.</source>
        <translation>Achsen sind, wie sie kommen: nicht gefeilt oder poliert.</translation>
    </message>
    <message>
        <source>Axles are not grooved or thinned.</source>
        <translation>Achsen sind nicht genutet oder dünner gemacht.</translation>
    </message>
    <message>
        <source>Axles are straight.</source>
        <translation>Achsen sind gerade.</translation>
    </message>
    <message>
        <source>Axles are the race&apos;s own.</source>
        <translation>Die Achsen sind die des Rennens.</translation>
    </message>
    <message>
        <source>Axles may be bent.</source>
        <translation>Achsen dürfen gebogen sein.</translation>
    </message>
    <message>
        <source>Axles may be filed and polished.</source>
        <translation>Achsen dürfen gefeilt und poliert sein.</translation>
    </message>
    <message>
        <source>Axles may be grooved or thinned where the wheel turns.</source>
        <translation>Achsen dürfen dort, wo das Rad sich dreht, genutet oder dünner sein.</translation>
    </message>
    <message>
        <source>Axles other than the race&apos;s own may be used.</source>
        <translation>Andere Achsen als die des Rennens dürfen benutzt werden.</translation>
    </message>
    <message>
        <source>Bearings, bushes or washers may be put between wheel and axle.</source>
        <translation>Lager, Buchsen oder Scheiben dürfen zwischen Rad und Achse sitzen.</translation>
    </message>
    <message>
        <source>Between the inner faces of left and right wheels there is at least this room for the lane&apos;s rail.</source>
        <translation>Zwischen den Innenflächen linker und rechter Räder ist mindestens dieser Platz für die Schiene der Bahn.</translation>
    </message>
    <message>
        <source>Between the lane and everything below the car but its wheels there is at least this gap.</source>
        <translation>Zwischen der Bahn und allem unter dem Wagen außer seinen Rädern ist mindestens dieser Abstand.</translation>
    </message>
    <message>
        <source>Both axles&apos; holes pass through the same cut: a weight in it can be held by neither, and the wood between is weak.</source>
        <translation>Die Löcher beider Achsen gehen durch denselben Ausschnitt: keine kann ein Gewicht darin halten, und das Holz dazwischen ist schwach.</translation>
    </message>
    <message>
        <source>Bring what you have: only what the lane and the start gate need.</source>
        <translation>Bring mit, was du hast: nur, was Bahn und Starttor brauchen.</translation>
    </message>
    <message>
        <source>Builders say that rear wheels canted by about 3° are faster. This model says that {cant_deg} costs {cost_ms} here: a canted wheel pushes its hub against the axle&apos;s head all the way, which takes {hub_mj}, and nothing pays for it, because a tread on its edge is taken to roll no easier than a flat one. A trial would settle it: about {runs} runs canted and {runs} level, by turns on one lane.</source>
        <translation>Wagenbauer sagen, dass Hinterräder mit etwa 3° Sturz schneller sind. Dieses Modell sagt, dass {cant_deg} hier {cost_ms} kosten: ein Rad mit Sturz drückt seine Nabe den ganzen Weg gegen den Kopf der Achse, das nimmt {hub_mj}, und nichts gleicht es aus, weil von einer Lauffläche auf der Kante angenommen wird, dass sie nicht leichter rollt als eine flache. Ein Versuch würde es klären: etwa {runs} Läufe mit Sturz und {runs} ohne, abwechselnd auf einer Bahn.</translation>
    </message>
    <message>
        <source>CIPM-2007, Metrologia 45 (2008) 149</source>
        <translation>CIPM-2007, Metrologia 45 (2008) 149</translation>
    </message>
    <message>
        <source>Calliper across the tread.</source>
        <translation>Miss mit dem Messschieber quer über die Lauffläche.</translation>
    </message>
    <message>
        <source>Calliper over the tread.</source>
        <translation>Miss mit dem Messschieber über die Lauffläche.</translation>
    </message>
    <message>
        <source>Cant the rear axles to {to_deg}, outer ends up (now {from_deg}).</source>
        <translation>Gib den Hinterachsen {to_deg} Sturz, äußere Enden nach oben (jetzt {from_deg}).</translation>
    </message>
    <message>
        <source>Car {n}</source>
        <translation>Wagen {n}</translation>
    </message>
    <message>
        <source>Change the lane</source>
        <translation>Bahn ändern</translation>
    </message>
    <message>
        <source>Choose rules</source>
        <translation>Regeln wählen</translation>
    </message>
    <message>
        <source>Choose wood</source>
        <translation>Holz wählen</translation>
    </message>
    <message>
        <source>Cone the wheels&apos; hubs, so that they rub close to the axle only.</source>
        <translation>Dreh die Naben der Räder kegelig, damit sie nur nahe der Achse reiben.</translation>
    </message>
    <message>
        <source>Confirm step</source>
        <translation>Schritt bestätigen</translation>
    </message>
    <message>
        <source>Constant slope</source>
        <translation>Gleichmäßiges Gefälle</translation>
    </message>
    <message>
        <source>Douglas-fir, coast</source>
        <translation>Douglasie, Küste</translation>
    </message>
    <message>
        <source>Drag coefficients by class of body, referred to frontal area. Each with its published range; one sigma is a fifth of the value.</source>
        <translation>Widerstandsbeiwerte nach Art des Körpers, auf die Stirnfläche bezogen. Jeder mit seinem veröffentlichten Bereich; ein Sigma ist ein Fünftel des Werts.</translation>
    </message>
    <message>
        <source>Draw a finger nail along the axle.</source>
        <translation>Fahr mit dem Fingernagel an der Achse entlang.</translation>
    </message>
    <message>
        <source>Draw a strip of paper under each wheel on a flat plate.</source>
        <translation>Zieh auf einer ebenen Platte einen Papierstreifen unter jedem Rad durch.</translation>
    </message>
    <message>
        <source>Drill the axle holes in a jig: true to {to_deg} instead of {from_deg}.</source>
        <translation>Bohr die Achslöcher in einer Lehre: auf {to_deg} genau statt auf {from_deg}.</translation>
    </message>
    <message>
        <source>Drill&apos;s point</source>
        <translation>Bohrerspitze</translation>
    </message>
    <message>
        <source>Duplicate car</source>
        <translation>Wagen duplizieren</translation>
    </message>
    <message>
        <source>Duplicate {what}</source>
        <translation>Duplizieren: {what}</translation>
    </message>
    <message>
        <source>Each wheel alone weighs at least this.</source>
        <translation>Jedes Rad allein wiegt mindestens dies.</translation>
    </message>
    <message>
        <source>Each wheel is at least this wide from inner to outer face.</source>
        <translation>Jedes Rad ist von der Innen- zur Außenfläche mindestens so breit.</translation>
    </message>
    <message>
        <source>Each wheel&apos;s diameter is at least this.</source>
        <translation>Der Durchmesser jedes Rads beträgt mindestens dies.</translation>
    </message>
    <message>
        <source>Each wheel&apos;s diameter is no more than this.</source>
        <translation>Der Durchmesser jedes Rads beträgt nicht mehr als dies.</translation>
    </message>
    <message>
        <source>Empty the tuning log</source>
        <translation>Einstellprotokoll leeren</translation>
    </message>
    <message>
        <source>Every weight is held: nothing in the car moves but its wheels.</source>
        <translation>Jedes Gewicht ist befestigt: nichts im Wagen bewegt sich außer seinen Rädern.</translation>
    </message>
    <message>
        <source>Fast and two-part glues stick skin in seconds and can sting eyes and lungs. Gloves and goggles on, fresh air, and an adult close by; if fingers stick, warm soapy water, never force. Local rules and the adult in charge decide.</source>
        <translation>Sekunden- und Zweikomponentenkleber kleben Haut in Sekunden zusammen und können Augen und Lunge reizen. Handschuhe und Schutzbrille auf, frische Luft, und ein Erwachsener in der Nähe; kleben Finger zusammen, warmes Seifenwasser, nie Gewalt. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>First-timers&apos; class</source>
        <translation>Klasse für Neulinge</translation>
    </message>
    <message>
        <source>Fit bench wheel</source>
        <translation>Rad vom Messplatz einsetzen</translation>
    </message>
    <message>
        <source>Flat end</source>
        <translation>Flaches Ende</translation>
    </message>
    <message>
        <source>For a first car: the wheels and axles that come with the block, as they come, and nothing that needs a workshop.</source>
        <translation>Für einen ersten Wagen: die Räder und Achsen, die beim Klotz dabei sind, wie sie kommen, und nichts, was eine Werkstatt braucht.</translation>
    </message>
    <message>
        <source>For a race on a lane you have not seen: a usual shape, with its fall known to 150 mm and its way to 800 mm only. Invented.</source>
        <translation>Für ein Rennen auf einer Bahn, die du nicht gesehen hast: eine übliche Form, deren Fallhöhe nur auf 150 mm und deren Weg nur auf 800 mm bekannt ist. Erfunden.</translation>
    </message>
    <message>
        <source>For those who tune: wheels and axles may be worked, a front wheel may be raised; the size of the car and what keeps the lane whole stay.</source>
        <translation>Für alle, die tüfteln: Räder und Achsen dürfen bearbeitet, ein Vorderrad darf angehoben sein; die Größe des Wagens und was die Bahn heil lässt, bleiben.</translation>
    </message>
    <message>
        <source>Four wheels touch: how an axle&apos;s load is shared left and right depends on hairbreadths; shown is the share of equally stiff wheels.</source>
        <translation>Vier Räder setzen auf: wie sich die Last einer Achse links und rechts verteilt, hängt an Haaresbreiten; gezeigt ist die Verteilung gleich steifer Räder.</translation>
    </message>
    <message>
        <source>Free class</source>
        <translation>Freie Klasse</translation>
    </message>
    <message>
        <source>From the hindmost to the foremost point the car is no longer than this.</source>
        <translation>Vom hintersten bis zum vordersten Punkt ist der Wagen nicht länger als dies.</translation>
    </message>
    <message>
        <source>From the middle of the rear axle to the middle of the front axle it is at least this far.</source>
        <translation>Von Mitte Hinterachse bis Mitte Vorderachse ist es mindestens so weit.</translation>
    </message>
    <message>
        <source>From the middle of the rear axle to the middle of the front axle it is no further than this.</source>
        <translation>Von Mitte Hinterachse bis Mitte Vorderachse ist es nicht weiter als dies.</translation>
    </message>
    <message>
        <source>Front and rear add up to {amount} less than the whole car: the block and the scale were not of one height, or a wheel leaned on something. Weigh again.</source>
        <translation>Vorn und hinten ergeben zusammen {amount} weniger als der ganze Wagen: Klotz und Waage waren nicht gleich hoch, oder ein Rad lehnte an etwas. Wieg noch einmal.</translation>
    </message>
    <message>
        <source>Front and rear add up to {amount} more than the whole car: the block and the scale were not of one height, or a wheel leaned on something. Weigh again.</source>
        <translation>Vorn und hinten ergeben zusammen {amount} mehr als der ganze Wagen: Klotz und Waage waren nicht gleich hoch, oder ein Rad lehnte an etwas. Wieg noch einmal.</translation>
    </message>
    <message>
        <source>Graphite powder gets into lungs and onto everything. Use little, over paper, away from the face and from plugs and sockets, and wipe up what falls. Local rules and the adult in charge decide.</source>
        <translation>Graphitpulver gerät in die Lunge und auf alles. Nimm wenig, über Papier, weg vom Gesicht und von Steckern und Steckdosen, und wisch auf, was herunterfällt. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Guidance margin {margin} with {front_load_g} in front: below 1 the front is too light, or steered too little, to hold the car against bumps.</source>
        <translation>Führungsreserve {margin} mit {front_load_g} vorn: unter 1 ist es vorn zu leicht oder die Spur zu klein, um den Wagen gegen Stöße zu halten.</translation>
    </message>
    <message>
        <source>Harbour Hall lane</source>
        <translation>Bahn der Hafenhalle</translation>
    </message>
    <message>
        <source>Harbour Hall race committee (invented for the demo; not anyone&apos;s rule book)</source>
        <translation>Rennleitung der Hafenhalle (für das Beispiel erfunden; niemandes Regelbuch)</translation>
    </message>
    <message>
        <source>Harbour Hall, invented: small hands build these cars</source>
        <translation>Hafenhalle, erfunden: kleine Hände bauen diese Wagen</translation>
    </message>
    <message>
        <source>Harbour Hall, invented; near 5 oz (141.75 g), a usual limit (common practice, no source)</source>
        <translation>Hafenhalle, erfunden; nahe 5 oz (141,75 g), einer üblichen Grenze (übliche Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <source>Hold a paper clip to it.</source>
        <translation>Halt eine Büroklammer daran.</translation>
    </message>
    <message>
        <source>Hubs are not coned.</source>
        <translation>Naben sind nicht kegelig.</translation>
    </message>
    <message>
        <source>Hubs may be coned.</source>
        <translation>Naben dürfen kegelig sein.</translation>
    </message>
    <message>
        <source>It rolls {way} at {speed} on average, slowly at first and fast at the end, and that takes {time}.</source>
        <translation>Er rollt {way} mit durchschnittlich {speed}, am Anfang langsam und am Ende schnell, und das dauert {time}.</translation>
    </message>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Lead is poisonous. An adult handles it, with gloves; never sand, file or melt it indoors, never put it in the mouth, wash hands before eating, and close it in under glue or paint. Local rules and the adult in charge decide.</source>
        <translation>Blei ist giftig. Ein Erwachsener fasst es an, mit Handschuhen; nie drinnen schleifen, feilen oder schmelzen, nie in den Mund nehmen, vor dem Essen Hände waschen, und unter Kleber oder Farbe einschließen. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Lead may be used as weight.</source>
        <translation>Blei darf als Gewicht benutzt werden.</translation>
    </message>
    <message>
        <source>Leaning on the guide rail or bumping into it costs {energy}, and {time} of the heat.</source>
        <translation>An der Führungsschiene anliegen oder dagegenstoßen kostet {energy}, und {time} des Laufs.</translation>
    </message>
    <message>
        <source>Let it stand on a level table.</source>
        <translation>Lass ihn auf einem ebenen Tisch stehen.</translation>
    </message>
    <message>
        <source>Let touch</source>
        <translation>Aufsetzen</translation>
    </message>
    <message>
        <source>Lighter wheels: {each_g} off each, put back as weight at the balance point.</source>
        <translation>Leichtere Räder: je {each_g} weniger, als Gewicht am Schwerpunkt wieder dazugegeben.</translation>
    </message>
    <message>
        <source>Lock {what}</source>
        <translation>Festsetzen: {what}</translation>
    </message>
    <message>
        <source>Log a roll</source>
        <translation>Rollversuch eintragen</translation>
    </message>
    <message>
        <source>Log a turn of the axle</source>
        <translation>Drehen der Achse eintragen</translation>
    </message>
    <message>
        <source>Long wooden lane</source>
        <translation>Lange Holzbahn</translation>
    </message>
    <message>
        <source>Look at both faces of each hub.</source>
        <translation>Sieh dir beide Flächen jeder Nabe an.</translation>
    </message>
    <message>
        <source>Look at each axle where the wheel turns.</source>
        <translation>Sieh dir jede Achse dort an, wo das Rad sich dreht.</translation>
    </message>
    <message>
        <source>Look at each axle&apos;s head.</source>
        <translation>Sieh dir den Kopf jeder Achse an.</translation>
    </message>
    <message>
        <source>Look at the inner face of each wheel&apos;s hub.</source>
        <translation>Sieh dir die Innenfläche der Nabe jedes Rads an.</translation>
    </message>
    <message>
        <source>Look for the mould mark on each wheel.</source>
        <translation>Such auf jedem Rad das Zeichen der Gussform.</translation>
    </message>
    <message>
        <source>Look for the mould&apos;s marks on the tread; calliper the diameter.</source>
        <translation>Such die Spuren der Gussform auf der Lauffläche; miss den Durchmesser mit dem Messschieber.</translation>
    </message>
    <message>
        <source>Look through and behind each wheel; weigh one.</source>
        <translation>Sieh durch und hinter jedes Rad; wieg eines.</translation>
    </message>
    <message>
        <source>Make plan point a corner</source>
        <translation>Punkt des oberen Umrisses zur Ecke machen</translation>
    </message>
    <message>
        <source>Make plan point smooth</source>
        <translation>Punkt des oberen Umrisses glätten</translation>
    </message>
    <message>
        <source>Make profile point a corner</source>
        <translation>Punkt des Seitenumrisses zur Ecke machen</translation>
    </message>
    <message>
        <source>Make profile point smooth</source>
        <translation>Punkt des Seitenumrisses glätten</translation>
    </message>
    <message>
        <source>Make the body slimmer: {less_pct} less front for the air to meet.</source>
        <translation>Mach den Körper schlanker: {less_pct} weniger Stirnfläche für die Luft.</translation>
    </message>
    <message>
        <source>Measure from axle to axle on both sides.</source>
        <translation>Miss auf beiden Seiten von Achse zu Achse.</translation>
    </message>
    <message>
        <source>Measured points of the lane</source>
        <translation>Gemessene Punkte der Bahn</translation>
    </message>
    <message>
        <source>Mirror a copy of {what}</source>
        <translation>Gespiegelte Kopie: {what}</translation>
    </message>
    <message>
        <source>Mirror {what}</source>
        <translation>Spiegeln: {what}</translation>
    </message>
    <message>
        <source>Molten metal spits when it meets damp, and burns to the bone. Only an adult melts it, outdoors, dry, with face shield and leather gloves; never pour it into the wooden body. Local rules and the adult in charge decide.</source>
        <translation>Geschmolzenes Metall spritzt, wenn es auf Feuchtes trifft, und verbrennt bis auf den Knochen. Nur ein Erwachsener schmilzt es, im Freien, trocken, mit Gesichtsschutz und Lederhandschuhen; gieß es nie in den Holzkörper. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Move ballast</source>
        <translation>Ballast verschieben</translation>
    </message>
    <message>
        <source>Move cut</source>
        <translation>Ausschnitt verschieben</translation>
    </message>
    <message>
        <source>Move front axle</source>
        <translation>Vorderachse verschieben</translation>
    </message>
    <message>
        <source>Move plan point</source>
        <translation>Punkt des oberen Umrisses verschieben</translation>
    </message>
    <message>
        <source>Move profile point</source>
        <translation>Punkt des Seitenumrisses verschieben</translation>
    </message>
    <message>
        <source>Move rear axle</source>
        <translation>Hinterachse verschieben</translation>
    </message>
    <message>
        <source>Move the balance point {back_mm} back: front load {from_g} to {to_g}.</source>
        <translation>Verschieb den Schwerpunkt um {back_mm} nach hinten: Vorderachslast von {from_g} auf {to_g}.</translation>
    </message>
    <message>
        <source>Move {piece} ({mass}) {by} back</source>
        <translation>Verschieb {piece} ({mass}) um {by} nach hinten</translation>
    </message>
    <message>
        <source>Move {piece} ({mass}) {by} forward</source>
        <translation>Verschieb {piece} ({mass}) um {by} nach vorn</translation>
    </message>
    <message>
        <source>Move {what}</source>
        <translation>Verschieben: {what}</translation>
    </message>
    <message>
        <source>No drill bit of {diameter_mm} is among your tools; the nearest is {nearest_mm}.</source>
        <translation>Unter deinem Werkzeug ist kein Bohrer mit {diameter_mm}; der nächste hat {nearest_mm}.</translation>
    </message>
    <message>
        <source>No weight is of lead.</source>
        <translation>Kein Gewicht ist aus Blei.</translation>
    </message>
    <message>
        <source>No wheel is raised off the lane: all four stand on it.</source>
        <translation>Kein Rad ist von der Bahn abgehoben: alle vier stehen darauf.</translation>
    </message>
    <message>
        <source>Nobody has measured this lane: that alone makes the time uncertain by {lane_ms}. What the scale and the rule say does not depend on it: weight, balance point, front load, fit and rules. Which of two cars is faster hardly does. docs/measure-a-lane.md tells how to measure it with tape and level.</source>
        <translation>Niemand hat diese Bahn gemessen: das allein macht die Zeit um {lane_ms} unsicher. Was die Waage und das Lineal sagen, hängt nicht davon ab: Gewicht, Schwerpunkt, Vorderachslast, Passung und Regeln. Welcher von zwei Wagen schneller ist, kaum. Wie man sie mit Maßband und Wasserwaage misst, steht in docs/measure-a-lane.md.</translation>
    </message>
    <message>
        <source>Nobody knows the friction and the sizes exactly, so the time may well be {sigma} off: 19 heats of 20 lie between {low} and {high}.</source>
        <translation>Niemand kennt Reibung und Größen genau, darum kann die Zeit gut um {sigma} danebenliegen: 19 von 20 Läufen liegen zwischen {low} und {high}.</translation>
    </message>
    <message>
        <source>Note a wheel&apos;s spin-down</source>
        <translation>Auslauf eines Rads eintragen</translation>
    </message>
    <message>
        <source>Note a wheel&apos;s swings</source>
        <translation>Schwingungen eines Rads eintragen</translation>
    </message>
    <message>
        <source>Nothing but gravity moves the car.</source>
        <translation>Nichts als die Schwerkraft bewegt den Wagen.</translation>
    </message>
    <message>
        <source>Nothing in the car is liquid.</source>
        <translation>Nichts im Wagen ist flüssig.</translation>
    </message>
    <message>
        <source>Nothing in the car is sprung.</source>
        <translation>Nichts am Wagen ist gefedert.</translation>
    </message>
    <message>
        <source>Nothing on the nose catches on the start pin or is moved by it.</source>
        <translation>Nichts an der Nase hängt am Startstift oder wird von ihm bewegt.</translation>
    </message>
    <message>
        <source>Nowhere on the way is it faster than {speed}.</source>
        <translation>Nirgends auf dem Weg ist er schneller als {speed}.</translation>
    </message>
    <message>
        <source>Of all the car&apos;s weight the front wheels carry {load}; the rear wheels carry the rest.</source>
        <translation>Vom ganzen Gewicht des Wagens tragen die Vorderräder {load}; die Hinterräder tragen den Rest.</translation>
    </message>
    <message>
        <source>On four wheels this one carries nothing: it would hang in the air.</source>
        <translation>Auf vier Rädern trägt dieses nichts: es würde in der Luft hängen.</translation>
    </message>
    <message>
        <source>One straight board all the way, no bend and no level: the simplest lane to measure, and the one to learn friction on. Invented.</source>
        <translation>Ein gerades Brett den ganzen Weg, kein Bogen und keine Ebene: die einfachste Bahn zum Messen, und die, auf der man Reibung lernt. Erfunden.</translation>
    </message>
    <message>
        <source>Only these lubricants are used, and none that drips or leaves a trace on the lane.</source>
        <translation>Nur diese Schmiermittel werden benutzt, und keines, das tropft oder Spuren auf der Bahn lässt.</translation>
    </message>
    <message>
        <source>Only {clearance_mm} between this weight and the axle.</source>
        <translation>Nur {clearance_mm} zwischen diesem Gewicht und der Achse.</translation>
    </message>
    <message>
        <source>Only {held_mm} of the axle is in the wood: a knock will bend or loosen it.</source>
        <translation>Nur {held_mm} der Achse stecken im Holz: ein Stoß verbiegt oder lockert sie.</translation>
    </message>
    <message>
        <source>Only {strip_mm} of the block is left over here, less than the {kerf_mm} that the saw&apos;s blade takes: plane or sand it down instead.</source>
        <translation>Nur {strip_mm} des Klotzes bleiben hier übrig, weniger als die {kerf_mm}, die das Sägeblatt nimmt: hobel oder schleif sie stattdessen ab.</translation>
    </message>
    <message>
        <source>Open evening</source>
        <translation>Offener Abend</translation>
    </message>
    <message>
        <source>Open step again</source>
        <translation>Schritt wieder öffnen</translation>
    </message>
    <message>
        <source>Over wheels and axle heads the car is no wider than this.</source>
        <translation>Über Räder und Achsköpfe ist der Wagen nicht breiter als dies.</translation>
    </message>
    <message>
        <source>Paints and solvents give off vapour that harms and burns. Work outdoors or with the windows open, away from flames, with the lid back on. Local rules and the adult in charge decide.</source>
        <translation>Farben und Lösemittel geben Dampf ab, der schadet und brennt. Arbeite im Freien oder bei offenen Fenstern, weg von Flammen, und mach den Deckel wieder zu. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Paste {what}</source>
        <translation>Einfügen: {what}</translation>
    </message>
    <message>
        <source>Polish the axles and dust them well: friction {from} to {to}.</source>
        <translation>Polier die Achsen und schmier sie gut mit Pulver: Reibung {from} auf {to}.</translation>
    </message>
    <message>
        <source>Press down on each end.</source>
        <translation>Drück auf jedes Ende.</translation>
    </message>
    <message>
        <source>Pushing the air aside with {area} of front costs {energy}, and {time} of the heat.</source>
        <translation>Die Luft mit {area} Stirnfläche beiseitezuschieben kostet {energy}, und {time} des Laufs.</translation>
    </message>
    <message>
        <source>Put a ruler under the car {balance} in front of the rear axle and it stays level, like a seesaw with nobody heavier.</source>
        <translation>Leg ein Lineal unter den Wagen, {balance} vor der Hinterachse, und er bleibt waagerecht, wie eine Wippe, auf der niemand schwerer ist.</translation>
    </message>
    <message>
        <source>Put it on the race&apos;s scale; what the display shows counts.</source>
        <translation>Stell ihn auf die Waage des Rennens; es gilt, was die Anzeige zeigt.</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>Anheben</translation>
    </message>
    <message>
        <source>Raise one front wheel by {raised_mm}, so that it need not be turned.</source>
        <translation>Heb ein Vorderrad um {raised_mm} an, damit es nicht gedreht werden muss.</translation>
    </message>
    <message>
        <source>Remove ballast</source>
        <translation>Ballast entfernen</translation>
    </message>
    <message>
        <source>Remove car</source>
        <translation>Wagen entfernen</translation>
    </message>
    <message>
        <source>Remove cut</source>
        <translation>Ausschnitt entfernen</translation>
    </message>
    <message>
        <source>Remove from the lane</source>
        <translation>Aus der Bahn entfernen</translation>
    </message>
    <message>
        <source>Remove from the tuning log</source>
        <translation>Aus dem Einstellprotokoll entfernen</translation>
    </message>
    <message>
        <source>Remove picture</source>
        <translation>Bild entfernen</translation>
    </message>
    <message>
        <source>Remove plan point</source>
        <translation>Punkt des oberen Umrisses entfernen</translation>
    </message>
    <message>
        <source>Remove profile point</source>
        <translation>Punkt des Seitenumrisses entfernen</translation>
    </message>
    <message>
        <source>Remove {what}</source>
        <translation>Entfernen: {what}</translation>
    </message>
    <message>
        <source>Rename car</source>
        <translation>Wagen umbenennen</translation>
    </message>
    <message>
        <source>Rename cut</source>
        <translation>Ausschnitt umbenennen</translation>
    </message>
    <message>
        <source>Roll it under the height gauge.</source>
        <translation>Roll ihn unter der Höhenlehre durch.</translation>
    </message>
    <message>
        <source>Roll the car on a flat board and watch whether it turns.</source>
        <translation>Roll den Wagen auf einem ebenen Brett und sieh, ob er abbiegt.</translation>
    </message>
    <message>
        <source>Rolling squeezes wheel and track a tiny bit at every turn: {energy}, and {time} of the heat.</source>
        <translation>Rollen drückt Rad und Bahn bei jeder Drehung ein winziges bisschen ein: {energy}, und {time} des Laufs.</translation>
    </message>
    <message>
        <source>Set a small square against each wheel on a flat plate.</source>
        <translation>Stell auf einer ebenen Platte einen kleinen Winkel an jedes Rad.</translation>
    </message>
    <message>
        <source>Set axle table</source>
        <translation>Achstabelle setzen</translation>
    </message>
    <message>
        <source>Set cant</source>
        <translation>Sturz setzen</translation>
    </message>
    <message>
        <source>Set diameter</source>
        <translation>Durchmesser setzen</translation>
    </message>
    <message>
        <source>Set it against the start pin and let the pin fall slowly.</source>
        <translation>Stell ihn an den Startstift und lass den Stift langsam fallen.</translation>
    </message>
    <message>
        <source>Set it against the start pin, or against a block of the pin&apos;s height.</source>
        <translation>Stell ihn an den Startstift, oder an einen Klotz von der Höhe des Stifts.</translation>
    </message>
    <message>
        <source>Set it in the length gauge, or between two squares on a flat table.</source>
        <translation>Stell ihn in die Längenlehre, oder zwischen zwei Winkel auf einem ebenen Tisch.</translation>
    </message>
    <message>
        <source>Set it on a flat plate and draw a strip of paper under each wheel.</source>
        <translation>Stell ihn auf eine ebene Platte und zieh einen Papierstreifen unter jedem Rad durch.</translation>
    </message>
    <message>
        <source>Set mass</source>
        <translation>Masse setzen</translation>
    </message>
    <message>
        <source>Set the car over the gauge strip, wheels pushed inward.</source>
        <translation>Stell den Wagen über den Lehrenstreifen, Räder nach innen gedrückt.</translation>
    </message>
    <message>
        <source>Set the rear axles level (now canted by {from_deg}).</source>
        <translation>Stell die Hinterachsen ohne Sturz (jetzt {from_deg} Sturz).</translation>
    </message>
    <message>
        <source>Set toe</source>
        <translation>Spur setzen</translation>
    </message>
    <message>
        <source>Set what holds {piece}</source>
        <translation>Festlegen, was {piece} hält</translation>
    </message>
    <message>
        <source>Set wheel table</source>
        <translation>Radtabelle setzen</translation>
    </message>
    <message>
        <source>Shake it gently beside your ear.</source>
        <translation>Schüttle ihn sanft neben deinem Ohr.</translation>
    </message>
    <message>
        <source>Short club ramp</source>
        <translation>Kurze Vereinsrampe</translation>
    </message>
    <message>
        <source>Show inches and ounces</source>
        <translation>Zoll und Unzen zeigen</translation>
    </message>
    <message>
        <source>Show millimetres and grams</source>
        <translation>Millimeter und Gramm zeigen</translation>
    </message>
    <message>
        <source>Sitka spruce</source>
        <translation>Sitka-Fichte</translation>
    </message>
    <message>
        <source>Slide it through the width gauge, wheels pushed out to the axle heads.</source>
        <translation>Schieb ihn durch die Breitenlehre, Räder nach außen an die Achsköpfe gedrückt.</translation>
    </message>
    <message>
        <source>Slide the gauge strip through under the whole car, between its wheels.</source>
        <translation>Schieb den Lehrenstreifen unter dem ganzen Wagen durch, zwischen den Rädern.</translation>
    </message>
    <message>
        <source>Small weights and balls can be swallowed. Keep them in a closed box, away from small children. Local rules and the adult in charge decide.</source>
        <translation>Kleine Gewichte und Kugeln können verschluckt werden. Bewahr sie in einer geschlossenen Schachtel auf, weg von kleinen Kindern. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Solid tungsten is hard and brittle. Do not grind, saw or file it: the dust harms lungs and can burn. Buy the piece in the size you need. Local rules and the adult in charge decide.</source>
        <translation>Massives Wolfram ist hart und spröde. Nicht schleifen, sägen oder feilen: der Staub schadet der Lunge und kann brennen. Kauf das Stück in der Größe, die du brauchst. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Something other than gravity may move the car.</source>
        <translation>Etwas anderes als die Schwerkraft darf den Wagen bewegen.</translation>
    </message>
    <message>
        <source>Space {what} along {axis}</source>
        <translation>Verteilen entlang {axis}: {what}</translation>
    </message>
    <message>
        <source>Start and finish lines</source>
        <translation>Start- und Ziellinie</translation>
    </message>
    <message>
        <source>Start from shape</source>
        <translation>Mit Form beginnen</translation>
    </message>
    <message>
        <source>Steer the front wheel to {to_deg} (now {from_deg}).</source>
        <translation>Stell die Spur des Vorderrads auf {to_deg} (jetzt {from_deg}).</translation>
    </message>
    <message>
        <source>Take in car: {name}</source>
        <translation>Wagen übernehmen: {name}</translation>
    </message>
    <message>
        <source>Take in plan outline</source>
        <translation>Umriss von oben übernehmen</translation>
    </message>
    <message>
        <source>Take in profile outline</source>
        <translation>Seitenumriss übernehmen</translation>
    </message>
    <message>
        <source>Take in {n} cars</source>
        <translation>{n} Wagen übernehmen</translation>
    </message>
    <message>
        <source>Take off more than {putty}.</source>
        <translation>Nimm mehr als {putty} ab.</translation>
    </message>
    <message>
        <source>Take {mass} of putty off</source>
        <translation>Nimm {mass} Knete ab</translation>
    </message>
    <message>
        <source>Take {mass} of wood off</source>
        <translation>Nimm {mass} Holz ab</translation>
    </message>
    <message>
        <source>Take {mass} off</source>
        <translation>Nimm {mass} ab</translation>
    </message>
    <message>
        <source>The axle&apos;s hole lies outside of the wood: nothing holds the axle.</source>
        <translation>Das Loch der Achse liegt außerhalb des Holzes: nichts hält die Achse.</translation>
    </message>
    <message>
        <source>The axle&apos;s hole passes through a cut for {open_mm}: the axle is not held there.</source>
        <translation>Das Loch der Achse läuft auf {open_mm} durch einen Ausschnitt: dort wird die Achse nicht gehalten.</translation>
    </message>
    <message>
        <source>The balance point found is {shift_mm} ahead of the computed one ({wood_mm} of it if the wood makes up the difference in mass).</source>
        <translation>Der gefundene Schwerpunkt liegt {shift_mm} vor dem berechneten ({wood_mm} davon, wenn das Holz den Unterschied der Masse ausmacht).</translation>
    </message>
    <message>
        <source>The balance point found is {shift_mm} ahead of the computed one ({wood_mm} of it if the wood makes up the difference in mass). The rest would be {ballast_g} of weights sitting {ballast_mm} further forward than drawn.</source>
        <translation>Der gefundene Schwerpunkt liegt {shift_mm} vor dem berechneten ({wood_mm} davon, wenn das Holz den Unterschied der Masse ausmacht). Der Rest wären {ballast_g} Gewichte, die {ballast_mm} weiter vorn sitzen als gezeichnet.</translation>
    </message>
    <message>
        <source>The balance point found is {shift_mm} behind the computed one ({wood_mm} of it if the wood makes up the difference in mass).</source>
        <translation>Der gefundene Schwerpunkt liegt {shift_mm} hinter dem berechneten ({wood_mm} davon, wenn das Holz den Unterschied der Masse ausmacht).</translation>
    </message>
    <message>
        <source>The balance point found is {shift_mm} behind the computed one ({wood_mm} of it if the wood makes up the difference in mass). The rest would be {ballast_g} of weights sitting {ballast_mm} further back than drawn.</source>
        <translation>Der gefundene Schwerpunkt liegt {shift_mm} hinter dem berechneten ({wood_mm} davon, wenn das Holz den Unterschied der Masse ausmacht). Der Rest wären {ballast_g} Gewichte, die {ballast_mm} weiter hinten sitzen als gezeichnet.</translation>
    </message>
    <message>
        <source>The balance point is only {margin_mm} inside the wheels&apos; outline: a bump tips the car.</source>
        <translation>Der Schwerpunkt liegt nur {margin_mm} innerhalb der Standfläche der Räder: ein Stoß kippt den Wagen.</translation>
    </message>
    <message>
        <source>The balance point lies {outside_mm} outside of the wheels that touch: the car tips over.</source>
        <translation>Der Schwerpunkt liegt {outside_mm} außerhalb der aufsetzenden Räder: der Wagen kippt um.</translation>
    </message>
    <message>
        <source>The balance point sinks by {drop} from start to finish, and that frees {energy} of energy to go fast with.</source>
        <translation>Der Schwerpunkt sinkt vom Start zum Ziel um {drop}, und das setzt {energy} Energie zum Schnellfahren frei.</translation>
    </message>
    <message>
        <source>The balance point stays {far} further back than planned: no weight can be moved forward any further. A longer pocket would mend it (an adult cuts it), or taking weight off behind and putting the same on in front.</source>
        <translation>Der Schwerpunkt bleibt {far} weiter hinten als geplant: kein Gewicht lässt sich weiter nach vorn verschieben. Eine längere Tasche würde helfen (ein Erwachsener schneidet sie), oder hinten Gewicht abzunehmen und vorn dasselbe dazuzugeben.</translation>
    </message>
    <message>
        <source>The balance point stays {far} further forward than planned: no weight can be moved back any further. A longer pocket would mend it (an adult cuts it), or taking weight off in front and putting the same on behind.</source>
        <translation>Der Schwerpunkt bleibt {far} weiter vorn als geplant: kein Gewicht lässt sich weiter nach hinten verschieben. Eine längere Tasche würde helfen (ein Erwachsener schneidet sie), oder vorn Gewicht abzunehmen und hinten dasselbe dazuzugeben.</translation>
    </message>
    <message>
        <source>The car may be sprung.</source>
        <translation>Der Wagen darf gefedert sein.</translation>
    </message>
    <message>
        <source>The car may carry magnets.</source>
        <translation>Der Wagen darf Magnete tragen.</translation>
    </message>
    <message>
        <source>The car steers {steer_deg} away from its raised wheel: then the wheel that stands still rubs on the rail. Steer towards the raised wheel&apos;s side.</source>
        <translation>Der Wagen lenkt um {steer_deg} von seinem angehobenen Rad weg: dann reibt das stillstehende Rad an der Schiene. Lenk zur Seite des angehobenen Rads.</translation>
    </message>
    <message>
        <source>The car stops {reached_mm} down the track, before the finish line.</source>
        <translation>Der Wagen bleibt nach {reached_mm} Bahn stehen, vor der Ziellinie.</translation>
    </message>
    <message>
        <source>The car was built on this day or later, for this race.</source>
        <translation>Der Wagen wurde an diesem Tag oder später gebaut, für dieses Rennen.</translation>
    </message>
    <message>
        <source>The car weighs {difference_g} less than its parts add up to. If the wood alone is lighter, it is {density_kg_m3} instead of {planned_kg_m3}.</source>
        <translation>Der Wagen wiegt {difference_g} weniger, als seine Teile zusammen ergeben. Wenn allein das Holz leichter ist, hat es {density_kg_m3} statt {planned_kg_m3}.</translation>
    </message>
    <message>
        <source>The car weighs {difference_g} more than its parts add up to. If the wood alone is denser, it is {density_kg_m3} instead of {planned_kg_m3}; glue and paint that the plan leaves out weigh too.</source>
        <translation>Der Wagen wiegt {difference_g} mehr, als seine Teile zusammen ergeben. Wenn allein das Holz dichter ist, hat es {density_kg_m3} statt {planned_kg_m3}; auch Kleber und Farbe, die der Plan weglässt, wiegen etwas.</translation>
    </message>
    <message>
        <source>The car&apos;s lowest point is {below_mm} below the running surface: it would drag.</source>
        <translation>Der tiefste Punkt des Wagens liegt {below_mm} unter der Lauffläche der Bahn: er würde schleifen.</translation>
    </message>
    <message>
        <source>The car&apos;s weight is known to {sigma} (one sigma). To be sure on both scales, let this much come off easily: {off}; and carry to add: {carry}.</source>
        <translation>Das Gewicht des Wagens ist auf {sigma} bekannt (ein Sigma). Um auf beiden Waagen sicher zu sein, lass so viel leicht abnehmbar sein: {off}; und bring zum Dazugeben mit: {carry}.</translation>
    </message>
    <message>
        <source>The car, ready to race, weighs no more than this on the race&apos;s scale.</source>
        <translation>Der rennfertige Wagen wiegt auf der Waage des Rennens nicht mehr als dies.</translation>
    </message>
    <message>
        <source>The centre of mass found is {found_mm} above the track, computed are {computed_mm}.</source>
        <translation>Der Schwerpunkt liegt gemessen {found_mm} über der Bahn, berechnet sind {computed_mm}.</translation>
    </message>
    <message>
        <source>The chance that it glides along the rail and does not bounce from side to side is {chance}.</source>
        <translation>Die Chance, dass er an der Schiene entlanggleitet und nicht von Seite zu Seite prallt, ist {chance}.</translation>
    </message>
    <message>
        <source>The cut that should hold this weight is not in the wood.</source>
        <translation>Der Ausschnitt, der dieses Gewicht halten soll, liegt nicht im Holz.</translation>
    </message>
    <message>
        <source>The driver drew the car&apos;s shape.</source>
        <translation>Wer fährt, hat die Form des Wagens gezeichnet.</translation>
    </message>
    <message>
        <source>The foremost point of the body is no higher above the lane than this, so that the start pin holds the car there.</source>
        <translation>Der vorderste Punkt des Körpers liegt nicht höher über der Bahn als dies, sodass der Startstift den Wagen dort hält.</translation>
    </message>
    <message>
        <source>The front wheels carry nothing at {at_mm} down the track: the nose lifts there, and the figures assume it does not.</source>
        <translation>Die Vorderräder tragen nach {at_mm} Bahn nichts: dort hebt sich die Nase, und die Zahlen nehmen an, dass sie es nicht tut.</translation>
    </message>
    <message>
        <source>The hole is {tight_mm} narrower than the axle: the wood will split or the axle bend. Drill in steps, the piece clamped, eyes covered.</source>
        <translation>Das Loch ist {tight_mm} enger als die Achse: das Holz reißt oder die Achse verbiegt sich. Bohr in Stufen, das Teil eingespannt, die Augen geschützt.</translation>
    </message>
    <message>
        <source>The lane of the demo&apos;s race night: wood, a ramp of 25 degrees, an eased bend, a long level run. Invented.</source>
        <translation>Die Bahn des Rennabends im Beispiel: Holz, eine Rampe von 25 Grad, ein Bogen mit Übergängen, eine lange Ebene. Erfunden.</translation>
    </message>
    <message>
        <source>The nose may carry something that catches on the start pin or is moved by it.</source>
        <translation>Die Nase darf etwas tragen, das am Startstift hängt oder von ihm bewegt wird.</translation>
    </message>
    <message>
        <source>The putty is {excess_mm3} more than its cut holds ({capacity_mm3}).</source>
        <translation>Die Knete ist {excess_mm3} mehr, als ihr Ausschnitt fasst ({capacity_mm3}).</translation>
    </message>
    <message>
        <source>The race says of &quot;{rule}&quot;: {words}.</source>
        <translation>Das Rennen sagt zu &quot;{rule}&quot;: {words}.</translation>
    </message>
    <message>
        <source>The race states &quot;{rule}&quot;.</source>
        <translation>Das Rennen nennt &quot;{rule}&quot;.</translation>
    </message>
    <message>
        <source>The race&apos;s scale finds the car legal, a worse one would read {worse_reads_g}: keep {off_g} of putty where it comes off easily, {pellet_mm} of a {diameter_mm} pellet.</source>
        <translation>Auf der Waage des Rennens ist der Wagen erlaubt, eine schlechtere würde {worse_reads_g} zeigen: lass {off_g} Knete dort, wo sie leicht abgeht, {pellet_mm} eines {diameter_mm} dicken Würstchens.</translation>
    </message>
    <message>
        <source>The race&apos;s scale, {scale}, {verdict}.</source>
        <translation>Die Waage des Rennens, {scale}, {verdict}.</translation>
    </message>
    <message>
        <source>The rear wheels carry nothing at {at_mm} down the track: the tail lifts there, and the figures assume it does not.</source>
        <translation>Die Hinterräder tragen nach {at_mm} Bahn nichts: dort hebt sich das Heck, und die Zahlen nehmen an, dass es das nicht tut.</translation>
    </message>
    <message>
        <source>The saw&apos;s blade takes {kerf_mm}, the axle slots are {slot_mm} wide: sawn with it they come out wider, and the axles sit loose.</source>
        <translation>Das Sägeblatt nimmt {kerf_mm}, die Achsschlitze sind {slot_mm} breit: damit gesägt werden sie breiter, und die Achsen sitzen lose.</translation>
    </message>
    <message>
        <source>The scale counts in steps of {division}, so it shows {reads} for this car.</source>
        <translation>Die Waage zählt in Schritten von {division}, darum zeigt sie für diesen Wagen {reads}.</translation>
    </message>
    <message>
        <source>The tip of a hot-glue gun and the glue itself burn skin. An adult holds the gun; the weight stays hot for minutes. Local rules and the adult in charge decide.</source>
        <translation>Die Spitze einer Heißklebepistole und der Kleber selbst verbrennen Haut. Ein Erwachsener hält die Pistole; das Gewicht bleibt minutenlang heiß. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>The touching wheels of this axle differ by {difference_mm} in diameter: the car leans and steers.</source>
        <translation>Die aufsetzenden Räder dieser Achse unterscheiden sich im Durchmesser um {difference_mm}: der Wagen neigt sich und lenkt.</translation>
    </message>
    <message>
        <source>The two axles of this pair run into each other by {overlap_mm} in the middle: shorten them.</source>
        <translation>Die beiden Achsen dieses Paars stoßen in der Mitte um {overlap_mm} ineinander: kürze sie.</translation>
    </message>
    <message>
        <source>The wall left here is {wall_mm}: under {least_mm} pine breaks easily.</source>
        <translation>Die Wand, die hier bleibt, ist {wall_mm} dick: unter {least_mm} bricht Kiefer leicht.</translation>
    </message>
    <message>
        <source>The wheel runs into the wood by {overlap_mm}: widen the gap or cut the body away there.</source>
        <translation>Das Rad läuft um {overlap_mm} ins Holz: mach den Spalt breiter oder schneid den Körper dort weg.</translation>
    </message>
    <message>
        <source>The wheels rub on their axles all the way down, and that eats {energy}. Without it the car would be {time} sooner.</source>
        <translation>Die Räder reiben den ganzen Weg auf ihren Achsen, und das frisst {energy}. Ohne das wäre der Wagen {time} früher da.</translation>
    </message>
    <message>
        <source>The whole car weighs {mass}, wheels and all: add up everything it is made of.</source>
        <translation>Der ganze Wagen wiegt {mass}, mit Rädern und allem: zähl alles zusammen, woraus er besteht.</translation>
    </message>
    <message>
        <source>There is no magnet in the car.</source>
        <translation>Im Wagen ist kein Magnet.</translation>
    </message>
    <message>
        <source>This weight does not fit its cut: it is outside by {outside_mm} ({outside_mm3}).</source>
        <translation>Dieses Gewicht passt nicht in seinen Ausschnitt: es ragt um {outside_mm} heraus ({outside_mm3}).</translation>
    </message>
    <message>
        <source>This weight hangs {clearance_mm} above the track, below the wood: a joint in the lane may catch it.</source>
        <translation>Dieses Gewicht hängt {clearance_mm} über der Bahn, unter dem Holz: es kann an einer Fuge der Bahn hängen bleiben.</translation>
    </message>
    <message>
        <source>This weight sticks out of the body by {outside_mm} ({outside_mm3}).</source>
        <translation>Dieses Gewicht ragt um {outside_mm} aus dem Körper heraus ({outside_mm3}).</translation>
    </message>
    <message>
        <source>Tilt it slowly beside your ear; ask what the weights are.</source>
        <translation>Neig ihn langsam neben deinem Ohr; frag, was die Gewichte sind.</translation>
    </message>
    <message>
        <source>Treads are as moulded: not turned, sanded or polished.</source>
        <translation>Laufflächen sind wie gegossen: nicht gedreht, geschliffen oder poliert.</translation>
    </message>
    <message>
        <source>Treads may be turned, sanded or polished.</source>
        <translation>Laufflächen dürfen gedreht, geschliffen oder poliert sein.</translation>
    </message>
    <message>
        <source>Turn each axle and watch its head.</source>
        <translation>Dreh jede Achse und beobachte ihren Kopf.</translation>
    </message>
    <message>
        <source>Two weights take the same room: {overlap_mm3} of it.</source>
        <translation>Zwei Gewichte nehmen denselben Platz ein: {overlap_mm3} davon.</translation>
    </message>
    <message>
        <source>Unlock {what}</source>
        <translation>Lösen: {what}</translation>
    </message>
    <message>
        <source>Waiting at the start pin, nose down by {slope}, the front wheels carry {load}.</source>
        <translation>Am Startstift wartend, die Nase um {slope} nach unten, tragen die Vorderräder {load}.</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Weigh the wheels before they go on, or one taken off.</source>
        <translation>Wieg die Räder, bevor sie drankommen, oder ein abgenommenes.</translation>
    </message>
    <message>
        <source>Weighing says that the balance point is {by_load_mm} ahead of the rear axle, the balance edge says {by_edge_mm}: they differ by {difference_mm}, or {difference_g} on the front. The front load counts: weigh it again with the car level.</source>
        <translation>Nach dem Wiegen liegt der Schwerpunkt {by_load_mm} vor der Hinterachse, nach der Schneide {by_edge_mm}: der Unterschied ist {difference_mm}, oder {difference_g} vorn. Die Vorderachslast gilt: wieg sie noch einmal, den Wagen waagerecht.</translation>
    </message>
    <message>
        <source>Weights may be liquid.</source>
        <translation>Gewichte dürfen flüssig sein.</translation>
    </message>
    <message>
        <source>Weights may be loose in the car.</source>
        <translation>Gewichte dürfen lose im Wagen sein.</translation>
    </message>
    <message>
        <source>Wheels are not drilled, hollowed or thinned.</source>
        <translation>Räder sind nicht gebohrt, ausgehöhlt oder dünner gemacht.</translation>
    </message>
    <message>
        <source>Wheels are the race&apos;s own.</source>
        <translation>Die Räder sind die des Rennens.</translation>
    </message>
    <message>
        <source>Wheels may be drilled, hollowed or thinned.</source>
        <translation>Räder dürfen gebohrt, ausgehöhlt oder dünner gemacht sein.</translation>
    </message>
    <message>
        <source>Wheels may lean inward or outward.</source>
        <translation>Räder dürfen nach innen oder außen geneigt sein.</translation>
    </message>
    <message>
        <source>Wheels other than the race&apos;s own may be used.</source>
        <translation>Andere Räder als die des Rennens dürfen benutzt werden.</translation>
    </message>
    <message>
        <source>Wheels point straight ahead, none is set to steer.</source>
        <translation>Räder zeigen geradeaus, keines ist auf Lenken gestellt.</translation>
    </message>
    <message>
        <source>Wheels stand upright, none leans.</source>
        <translation>Räder stehen aufrecht, keines ist geneigt.</translation>
    </message>
    <message>
        <source>Wheels turn on the axles themselves: no bearings, bushes or washers.</source>
        <translation>Räder drehen auf den Achsen selbst: keine Lager, Buchsen oder Scheiben.</translation>
    </message>
    <message>
        <source>Where a wheel is pushed sideways its hub rubs on the axle&apos;s head or on the wood: {energy}, and {time} of the heat.</source>
        <translation>Wo ein Rad seitwärts gedrückt wird, reibt seine Nabe am Achskopf oder am Holz: {energy}, und {time} des Laufs.</translation>
    </message>
    <message>
        <source>While it rolls, the front wheels press the track with {load} where they press least, {place} from the start.</source>
        <translation>Beim Rollen drücken die Vorderräder dort am wenigsten auf die Bahn, nämlich mit {load}, {place} nach dem Start.</translation>
    </message>
    <message>
        <source>With {load} on the front the steered wheel can push {margin} times as hard as the track&apos;s bumps push back; above 1 it holds its line.</source>
        <translation>Mit {load} vorn kann das lenkende Rad {margin}-mal so stark drücken, wie die Stöße der Bahn zurückdrücken; über 1 hält es seine Linie.</translation>
    </message>
    <message>
        <source>Wood dust harms lungs. Wear a dust mask, sand outdoors or with a vacuum cleaner, and wipe with a damp cloth. Local rules and the adult in charge decide.</source>
        <translation>Holzstaub schadet der Lunge. Trag eine Staubmaske, schleif im Freien oder mit Staubsauger, und wisch mit einem feuchten Tuch. Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>X does not rise from the point before</source>
        <translation>X steigt gegenüber dem vorigen Punkt nicht</translation>
    </message>
    <message>
        <source>a bore that ends where it starts</source>
        <translation>eine Bohrung, die endet, wo sie beginnt</translation>
    </message>
    <message>
        <source>a bracket closes that was never opened</source>
        <translation>eine Klammer schließt, die nie geöffnet wurde</translation>
    </message>
    <message>
        <source>a bracket is opened and not closed</source>
        <translation>eine Klammer ist geöffnet und nicht geschlossen</translation>
    </message>
    <message>
        <source>a car stands on both rear wheels and one or two front wheels: let it touch</source>
        <translation>ein Wagen steht auf beiden Hinterrädern und ein oder zwei Vorderrädern: lass es aufsetzen</translation>
    </message>
    <message>
        <source>a car stops short of the finish</source>
        <translation>ein Wagen bleibt vor dem Ziel stehen</translation>
    </message>
    <message>
        <source>a cut</source>
        <translation>ein Ausschnitt</translation>
    </message>
    <message>
        <source>a dab of epoxy glue</source>
        <translation>ein Tupfer Epoxidkleber</translation>
    </message>
    <message>
        <source>a dab of hot-melt glue</source>
        <translation>ein Tupfer Heißkleber</translation>
    </message>
    <message>
        <source>a dab of wood glue, dry</source>
        <translation>ein Tupfer Holzleim, trocken</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>eine Dichte</translation>
    </message>
    <message>
        <source>a drive of its own</source>
        <translation>eigener Antrieb</translation>
    </message>
    <message>
        <source>a flag of an arc is neither 0 nor 1</source>
        <translation>ein Schalter eines Bogens ist weder 0 noch 1</translation>
    </message>
    <message>
        <source>a force</source>
        <translation>eine Kraft</translation>
    </message>
    <message>
        <source>a lane that was measured point by point is called unknown</source>
        <translation>eine Bahn, die Punkt für Punkt gemessen ist, heißt unbekannt</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a list [ ... ]</source>
        <translation>eine Liste [ ... ]</translation>
    </message>
    <message>
        <source>a list of {what} where {other} are needed</source>
        <translation>eine Liste von {what}, wo {other} gebraucht werden</translation>
    </message>
    <message>
        <source>a mass</source>
        <translation>eine Masse</translation>
    </message>
    <message>
        <source>a mass is more than a million divisions of the scale</source>
        <translation>eine Masse hat mehr als eine Million Schritte der Waage</translation>
    </message>
    <message>
        <source>a measured point that is not beyond the one before it</source>
        <translation>ein gemessener Punkt, der nicht hinter dem vorigen liegt</translation>
    </message>
    <message>
        <source>a measured track needs at least four points</source>
        <translation>eine gemessene Bahn braucht mindestens vier Punkte</translation>
    </message>
    <message>
        <source>a moment of inertia</source>
        <translation>ein Trägheitsmoment</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number has more than one decimal mark</source>
        <translation>eine Zahl hat mehr als ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>a number is beyond all size</source>
        <translation>eine Zahl ist über jedes Maß groß</translation>
    </message>
    <message>
        <source>a number is divided by zero</source>
        <translation>eine Zahl wird durch null geteilt</translation>
    </message>
    <message>
        <source>a number is missing</source>
        <translation>eine Zahl fehlt</translation>
    </message>
    <message>
        <source>a number is missing at the end</source>
        <translation>am Ende fehlt eine Zahl</translation>
    </message>
    <message>
        <source>a number is too large or too close to zero</source>
        <translation>eine Zahl ist zu groß oder zu nahe bei null</translation>
    </message>
    <message>
        <source>a number that is not finite</source>
        <translation>eine Zahl, die nicht endlich ist</translation>
    </message>
    <message>
        <source>a number that is not finite cannot be written</source>
        <translation>eine Zahl, die nicht endlich ist, lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>a number too large to hold</source>
        <translation>eine Zahl, die zu groß ist</translation>
    </message>
    <message>
        <source>a number without a unit stands beside one in other units</source>
        <translation>eine Zahl ohne Einheit steht neben einer in anderen Einheiten</translation>
    </message>
    <message>
        <source>a part of the path is a file, not a folder</source>
        <translation>ein Teil des Pfads ist eine Datei, kein Ordner</translation>
    </message>
    <message>
        <source>a percentage</source>
        <translation>einen Prozentsatz</translation>
    </message>
    <message>
        <source>a piece</source>
        <translation>ein Stück</translation>
    </message>
    <message>
        <source>a plain number</source>
        <translation>eine bloße Zahl</translation>
    </message>
    <message>
        <source>a plain value stands on the way there</source>
        <translation>auf dem Weg dorthin steht ein einfacher Wert</translation>
    </message>
    <message>
        <source>a pocket has neither diameter nor point</source>
        <translation>eine Tasche hat weder Durchmesser noch Spitze</translation>
    </message>
    <message>
        <source>a pocket without length, width or depth</source>
        <translation>eine Tasche ohne Länge, Breite oder Tiefe</translation>
    </message>
    <message>
        <source>a point of {what} parts</source>
        <translation>ein Punkt aus {what} Teilen</translation>
    </message>
    <message>
        <source>a positive first slope: the track would start uphill</source>
        <translation>ein positives erstes Gefälle: die Bahn würde bergauf beginnen</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>einen Druck</translation>
    </message>
    <message>
        <source>a project is far smaller; check that this is the right file</source>
        <translation>ein Projekt ist viel kleiner; prüf, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>a project needs no more than ten; take an older copy of the file</source>
        <translation>ein Projekt braucht nicht mehr als zehn; nimm eine ältere Kopie der Datei</translation>
    </message>
    <message>
        <source>a ring whose inner radius is not below its outer one</source>
        <translation>ein Ring, dessen Innenradius nicht kleiner als der Außenradius ist</translation>
    </message>
    <message>
        <source>a skin of putty over it</source>
        <translation>eine Haut aus Knete darüber</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>a spin-down curve needs at least four readings of time and speed</source>
        <translation>eine Auslaufkurve braucht mindestens vier Ablesungen von Zeit und Drehzahl</translation>
    </message>
    <message>
        <source>a strip of adhesive tape</source>
        <translation>ein Streifen Klebeband</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>einen Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>a text is not valid UTF-8</source>
        <translation>ein Text ist kein gültiges UTF-8</translation>
    </message>
    <message>
        <source>a time</source>
        <translation>eine Zeit</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>ein Drehmoment</translation>
    </message>
    <message>
        <source>a unit follows a bracket that has units in it</source>
        <translation>eine Einheit folgt auf eine Klammer, in der Einheiten stehen</translation>
    </message>
    <message>
        <source>a unit stands here without a number</source>
        <translation>hier steht eine Einheit ohne Zahl</translation>
    </message>
    <message>
        <source>a value is missing here</source>
        <translation>hier fehlt ein Wert</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>a wheel is larger than the wheelbase allows</source>
        <translation>ein Rad ist größer, als der Radstand zulässt</translation>
    </message>
    <message>
        <source>a wooden plug, glued</source>
        <translation>ein Holzstopfen, geklebt</translation>
    </message>
    <message>
        <source>a word in quotes</source>
        <translation>ein Wort in Anführungszeichen</translation>
    </message>
    <message>
        <source>a worse scale would read {mass}</source>
        <translation>eine schlechtere Waage würde {mass} zeigen</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>air the wheels stir</source>
        <translation>Luft, die die Räder rühren</translation>
    </message>
    <message>
        <source>all of it stays: it is locked, putty, or in wood that is drilled</source>
        <translation>alles davon bleibt: es ist fest, Knete, oder in gebohrtem Holz</translation>
    </message>
    <message>
        <source>all {n} of &quot;{piece}&quot; on the shelf are in the car</source>
        <translation>alle {n} Stück &quot;{piece}&quot; aus dem Regal sind im Wagen</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>erlaubt</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>an acceleration</source>
        <translation>eine Beschleunigung</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>einen Winkel</translation>
    </message>
    <message>
        <source>an arc that does not turn</source>
        <translation>ein Bogen, der sich nicht krümmt</translation>
    </message>
    <message>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <source>an easing longer than the arc can hold</source>
        <translation>ein Übergang, länger als der Bogen fassen kann</translation>
    </message>
    <message>
        <source>an element of a list cannot be left out by itself</source>
        <translation>ein Element einer Liste lässt sich nicht für sich weglassen</translation>
    </message>
    <message>
        <source>an energy</source>
        <translation>eine Energie</translation>
    </message>
    <message>
        <source>an entry of the log is a roll or a turn</source>
        <translation>ein Eintrag des Protokolls ist ein Rollversuch oder eine Drehung</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>an object { ... }</source>
        <translation>ein Objekt { ... }</translation>
    </message>
    <message>
        <source>an outline of fewer than three points encloses nothing</source>
        <translation>ein Umriss aus weniger als drei Punkten umschließt nichts</translation>
    </message>
    <message>
        <source>another</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>arrow</source>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>at least {limit}</source>
        <translation>mindestens {limit}</translation>
    </message>
    <message>
        <source>at most {limit}</source>
        <translation>höchstens {limit}</translation>
    </message>
    <message>
        <source>at the balance point</source>
        <translation>am Schwerpunkt</translation>
    </message>
    <message>
        <source>at the front, about {distance} ahead of the rear axle</source>
        <translation>vorn, etwa {distance} vor der Hinterachse</translation>
    </message>
    <message>
        <source>at the rear, about {distance} ahead of the rear axle</source>
        <translation>hinten, etwa {distance} vor der Hinterachse</translation>
    </message>
    <message>
        <source>at the rear, about {distance} behind the rear axle</source>
        <translation>hinten, etwa {distance} hinter der Hinterachse</translation>
    </message>
    <message>
        <source>axle {corner}</source>
        <translation>Achse {corner}</translation>
    </message>
    <message>
        <source>axles</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>balance point</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>balance point ahead of rear axle</source>
        <translation>Schwerpunkt vor der Hinterachse</translation>
    </message>
    <message>
        <source>balance point ahead of the rear axle</source>
        <translation>Schwerpunkt vor der Hinterachse</translation>
    </message>
    <message>
        <source>ballast piece</source>
        <translation>Stück Ballast</translation>
    </message>
    <message>
        <source>ballast piece {n}</source>
        <translation>Ballaststück {n}</translation>
    </message>
    <message>
        <source>balsa</source>
        <translation>Balsa</translation>
    </message>
    <message>
        <source>bearings, bushes, washers</source>
        <translation>Lager, Buchsen, Scheiben</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>bent axles</source>
        <translation>gebogene Achsen</translation>
    </message>
    <message>
        <source>between the wheels</source>
        <translation>zwischen den Rädern</translation>
    </message>
    <message>
        <source>bigleaf maple</source>
        <translation>Großblättriger Ahorn</translation>
    </message>
    <message>
        <source>birch plywood</source>
        <translation>Birkensperrholz</translation>
    </message>
    <message>
        <source>bismuth</source>
        <translation>Bismut</translation>
    </message>
    <message>
        <source>bismuth-tin alloy, low melting</source>
        <translation>Bismut-Zinn-Legierung, niedrig schmelzend</translation>
    </message>
    <message>
        <source>black cherry</source>
        <translation>Spätblühende Traubenkirsche</translation>
    </message>
    <message>
        <source>black walnut</source>
        <translation>Schwarznuss</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Klotz</translation>
    </message>
    <message>
        <source>bore diameter</source>
        <translation>Durchmesser der Bohrung</translation>
    </message>
    <message>
        <source>both are measured along the surface from the start-gate end; give a larger finish_line_mm</source>
        <translation>beide werden entlang der Bahn vom Startende gemessen; gib ein größeres finish_line_mm an</translation>
    </message>
    <message>
        <source>breaks the rule</source>
        <translation>bricht die Regel</translation>
    </message>
    <message>
        <source>build date</source>
        <translation>Baudatum</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>cant</source>
        <translation>Sturz</translation>
    </message>
    <message>
        <source>cant of the front wheels</source>
        <translation>Sturz der Vorderräder</translation>
    </message>
    <message>
        <source>cant of the rear wheels</source>
        <translation>Sturz der Hinterräder</translation>
    </message>
    <message>
        <source>canted wheels</source>
        <translation>Räder mit Sturz</translation>
    </message>
    <message>
        <source>carbon steel</source>
        <translation>Kohlenstoffstahl</translation>
    </message>
    <message>
        <source>cast iron</source>
        <translation>Gusseisen</translation>
    </message>
    <message>
        <source>centre of mass above the lane</source>
        <translation>Schwerpunkt über der Bahn</translation>
    </message>
    <message>
        <source>centre of mass, any book of statics</source>
        <translation>Schwerpunkt, jedes Buch der Statik</translation>
    </message>
    <message>
        <source>change the points, or put another lane in</source>
        <translation>ändere die Punkte, oder setz eine andere Bahn ein</translation>
    </message>
    <message>
        <source>check &quot;outer_diameter_mm&quot; and the axles&apos; places</source>
        <translation>prüf &quot;outer_diameter_mm&quot; und die Orte der Achsen</translation>
    </message>
    <message>
        <source>check the arc&apos;s radius or the measured points</source>
        <translation>prüf den Radius des Bogens oder die gemessenen Punkte</translation>
    </message>
    <message>
        <source>check the distance and its unit</source>
        <translation>prüf den Abstand und seine Einheit</translation>
    </message>
    <message>
        <source>check the division, the mass and their units</source>
        <translation>prüf den Schritt, die Masse und ihre Einheiten</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>prüf den Namen</translation>
    </message>
    <message>
        <source>check the number</source>
        <translation>prüf die Zahl</translation>
    </message>
    <message>
        <source>check the path</source>
        <translation>prüf den Pfad</translation>
    </message>
    <message>
        <source>check the speeds, or let it run longer</source>
        <translation>prüf die Drehzahlen, oder lass es länger laufen</translation>
    </message>
    <message>
        <source>check the unit and the number</source>
        <translation>prüf Einheit und Zahl</translation>
    </message>
    <message>
        <source>choose a bore</source>
        <translation>wähl eine Bohrung</translation>
    </message>
    <message>
        <source>choose a shorter one</source>
        <translation>wähl einen kürzeren</translation>
    </message>
    <message>
        <source>choose a value that is there</source>
        <translation>wähl einen Wert, der da ist</translation>
    </message>
    <message>
        <source>choose another</source>
        <translation>wähl ein anderes</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>wähl einen anderen Ort</translation>
    </message>
    <message>
        <source>choose another place, or change the permissions</source>
        <translation>wähl einen anderen Ort, oder ändere die Rechte</translation>
    </message>
    <message>
        <source>choose another project</source>
        <translation>wähl ein anderes Projekt</translation>
    </message>
    <message>
        <source>choose one or more</source>
        <translation>wähl einen oder mehrere</translation>
    </message>
    <message>
        <source>choose one that is there</source>
        <translation>wähl etwas, das da ist</translation>
    </message>
    <message>
        <source>choose something to one side of the centre line</source>
        <translation>wähl etwas, das seitlich der Mittellinie liegt</translation>
    </message>
    <message>
        <source>choose three things or more</source>
        <translation>wähl drei Dinge oder mehr</translation>
    </message>
    <message>
        <source>choose two things or more</source>
        <translation>wähl zwei Dinge oder mehr</translation>
    </message>
    <message>
        <source>clearance below</source>
        <translation>Bodenfreiheit</translation>
    </message>
    <message>
        <source>click two that lie well apart</source>
        <translation>klick zwei an, die weit auseinander liegen</translation>
    </message>
    <message>
        <source>close it</source>
        <translation>schließ sie</translation>
    </message>
    <message>
        <source>coefficient of rolling resistance; its value from memory, to be calibrated</source>
        <translation>Rollwiderstandsbeiwert; sein Wert aus dem Gedächtnis, zu kalibrieren</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>coned hubs</source>
        <translation>kegelige Naben</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>copy pieces or cuts in Rampwright first</source>
        <translation>kopier zuerst Stücke oder Ausschnitte in Rampwright</translation>
    </message>
    <message>
        <source>correct the text there, or take an older copy of the file</source>
        <translation>berichtige den Text dort, oder nimm eine ältere Kopie der Datei</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>Ausschnitt</translation>
    </message>
    <message>
        <source>cut {n}</source>
        <translation>Ausschnitt {n}</translation>
    </message>
    <message>
        <source>cyanoacrylate glue, set</source>
        <translation>Sekundenkleber, ausgehärtet</translation>
    </message>
    <message>
        <source>degrees can&apos;t be added or multiplied</source>
        <translation>Temperaturen lassen sich nicht addieren oder multiplizieren</translation>
    </message>
    <message>
        <source>device at the start pin</source>
        <translation>Vorrichtung am Startstift</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>divide by another number</source>
        <translation>teil durch eine andere Zahl</translation>
    </message>
    <message>
        <source>division × (whole divisions in the limit + where the reading turns) − the scale&apos;s error − mass</source>
        <translation>Schritt × (ganze Schritte in der Grenze + wo die Anzeige umspringt) − Fehler der Waage − Masse</translation>
    </message>
    <message>
        <source>docs/model.md, Going straight</source>
        <translation>docs/model.md, Going straight</translation>
    </message>
    <message>
        <source>docs/model.md, Going straight; a reduced model</source>
        <translation>docs/model.md, Going straight; ein vereinfachtes Modell</translation>
    </message>
    <message>
        <source>docs/model.md, Losses at the wheel</source>
        <translation>docs/model.md, Losses at the wheel</translation>
    </message>
    <message>
        <source>does not reach the finish</source>
        <translation>erreicht das Ziel nicht</translation>
    </message>
    <message>
        <source>drag coefficient</source>
        <translation>Widerstandsbeiwert</translation>
    </message>
    <message>
        <source>drag equation, NASA Glenn; rotating disc (von Karman) for the wheels</source>
        <translation>Widerstandsgleichung, NASA Glenn; rotierende Scheibe (von Karman) für die Räder</translation>
    </message>
    <message>
        <source>draw the car at its own size</source>
        <translation>zeichne den Wagen in seiner eigenen Größe</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Tropfen</translation>
    </message>
    <message>
        <source>drops of cyanoacrylate glue</source>
        <translation>Tropfen Sekundenkleber</translation>
    </message>
    <message>
        <source>eastern white pine</source>
        <translation>Weymouth-Kiefer</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>end the file&apos;s name in .svg, .dxf, .stl or .csv</source>
        <translation>lass den Dateinamen auf .svg, .dxf, .stl oder .csv enden</translation>
    </message>
    <message>
        <source>energy released</source>
        <translation>freigesetzte Energie</translation>
    </message>
    <message>
        <source>energy theorem; the sum is made along the heat, docs/model.md</source>
        <translation>Energiesatz; die Summe ist entlang des Laufs gebildet, docs/model.md</translation>
    </message>
    <message>
        <source>enter it again</source>
        <translation>gib ihn noch einmal ein</translation>
    </message>
    <message>
        <source>epoxy glue, set</source>
        <translation>Epoxidkleber, ausgehärtet</translation>
    </message>
    <message>
        <source>epoxy putty</source>
        <translation>Epoxidknete</translation>
    </message>
    <message>
        <source>equations of motion, docs/model.md, Motion of one heat</source>
        <translation>Bewegungsgleichungen, docs/model.md, Motion of one heat</translation>
    </message>
    <message>
        <source>exactly at the limit</source>
        <translation>genau an der Grenze</translation>
    </message>
    <message>
        <source>exchange &quot;min&quot; and &quot;max&quot;</source>
        <translation>tausch &quot;min&quot; und &quot;max&quot;</translation>
    </message>
    <message>
        <source>fewer than four wheels have a mass</source>
        <translation>weniger als vier Räder haben eine Masse</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>Lack</translation>
    </message>
    <message>
        <source>first-order law of propagation, JCGM 100:2008 (GUM), 5.1.2</source>
        <translation>Fortpflanzung der Unsicherheit erster Ordnung, JCGM 100:2008 (GUM), 5.1.2</translation>
    </message>
    <message>
        <source>fishing shot of lead, 6 mm</source>
        <translation>Angelblei, 6 mm</translation>
    </message>
    <message>
        <source>friction at the axles</source>
        <translation>Reibung an den Achsen</translation>
    </message>
    <message>
        <source>friction of hubs on axle heads</source>
        <translation>Reibung der Naben an Achsköpfen</translation>
    </message>
    <message>
        <source>friction of hubs on the wood</source>
        <translation>Reibung der Naben am Holz</translation>
    </message>
    <message>
        <source>friction on the guide rail</source>
        <translation>Reibung an der Führungsschiene</translation>
    </message>
    <message>
        <source>friction × (bore radius / wheel radius × mean load, wheel by wheel) × distance; the mean loads are summed up along the heat</source>
        <translation>Reibung × (Bohrungsradius / Radradius × mittlere Last, Rad für Rad) × Weg; die mittleren Lasten sind entlang des Laufs summiert</translation>
    </message>
    <message>
        <source>from the front, about {distance} ahead of the rear axle</source>
        <translation>von vorn, etwa {distance} vor der Hinterachse</translation>
    </message>
    <message>
        <source>from the rear, about {distance} ahead of the rear axle</source>
        <translation>von hinten, etwa {distance} vor der Hinterachse</translation>
    </message>
    <message>
        <source>from the rear, about {distance} behind the rear axle</source>
        <translation>von hinten, etwa {distance} hinter der Hinterachse</translation>
    </message>
    <message>
        <source>front left</source>
        <translation>vorn links</translation>
    </message>
    <message>
        <source>front load</source>
        <translation>Vorderachslast</translation>
    </message>
    <message>
        <source>front load at the start pin</source>
        <translation>Vorderachslast am Startstift</translation>
    </message>
    <message>
        <source>front right</source>
        <translation>vorn rechts</translation>
    </message>
    <message>
        <source>front x</source>
        <translation>vorn x</translation>
    </message>
    <message>
        <source>frontal area</source>
        <translation>Stirnfläche</translation>
    </message>
    <message>
        <source>give &quot;drift_mm&quot; or &quot;turned_deg&quot;, not both</source>
        <translation>gib &quot;drift_mm&quot; oder &quot;turned_deg&quot; an, nicht beides</translation>
    </message>
    <message>
        <source>give &quot;pieces&quot; or &quot;measured_mm&quot;</source>
        <translation>gib &quot;pieces&quot; oder &quot;measured_mm&quot; an</translation>
    </message>
    <message>
        <source>give [a, b] or [a, b, &quot;smooth&quot;]</source>
        <translation>gib [a, b] oder [a, b, &quot;smooth&quot;] an</translation>
    </message>
    <message>
        <source>give [inner radius, outer radius]</source>
        <translation>gib [Innenradius, Außenradius] an</translation>
    </message>
    <message>
        <source>give a finite number</source>
        <translation>gib eine endliche Zahl an</translation>
    </message>
    <message>
        <source>give a larger bore or a thinner shank: a wheel needs play to turn</source>
        <translation>gib eine größere Bohrung oder einen dünneren Schaft an: ein Rad braucht Spiel zum Drehen</translation>
    </message>
    <message>
        <source>give a number between -1e308 and 1e308</source>
        <translation>gib eine Zahl zwischen -1e308 und 1e308 an</translation>
    </message>
    <message>
        <source>give a smaller bore or a larger wheel</source>
        <translation>gib eine kleinere Bohrung oder ein größeres Rad an</translation>
    </message>
    <message>
        <source>give a thinner web or a wider wheel</source>
        <translation>gib eine dünnere Scheibe oder ein breiteres Rad an</translation>
    </message>
    <message>
        <source>give a value above {low}, up to {high}</source>
        <translation>gib einen Wert über {low} an, höchstens {high}</translation>
    </message>
    <message>
        <source>give a value from {low} to {high}</source>
        <translation>gib einen Wert von {low} bis {high} an</translation>
    </message>
    <message>
        <source>give a whole number from {what} to {other}</source>
        <translation>gib eine ganze Zahl von {what} bis {other} an</translation>
    </message>
    <message>
        <source>give a wider head: it is what keeps the wheel on</source>
        <translation>gib einen breiteren Kopf an: er hält das Rad fest</translation>
    </message>
    <message>
        <source>give all four corners, or leave the list out for four usual wheels</source>
        <translation>gib alle vier Ecken an, oder lass die Liste weg für vier übliche Räder</translation>
    </message>
    <message>
        <source>give at least 3, or leave the outline out for the block&apos;s rectangle</source>
        <translation>gib mindestens 3 an, oder lass den Umriss weg für das Rechteck des Klotzes</translation>
    </message>
    <message>
        <source>give at least 4, more where the track bends</source>
        <translation>gib mindestens 4 an, mehr davon, wo sich die Bahn krümmt</translation>
    </message>
    <message>
        <source>give at least one piece</source>
        <translation>gib mindestens ein Stück an</translation>
    </message>
    <message>
        <source>give at most {what} mm (radius times the angle it turns by)</source>
        <translation>gib höchstens {what} mm an (Radius mal Winkel der Krümmung)</translation>
    </message>
    <message>
        <source>give both corners as [x, y, z] in millimetres</source>
        <translation>gib beide Ecken als [x, y, z] in Millimetern an</translation>
    </message>
    <message>
        <source>give both ends as [x, y, z] in millimetres</source>
        <translation>gib beide Enden als [x, y, z] in Millimetern an</translation>
    </message>
    <message>
        <source>give density_kg_m3 or block_mass_g, or one of {what}</source>
        <translation>gib density_kg_m3 oder block_mass_g an, oder eines von {what}</translation>
    </message>
    <message>
        <source>give each car an id of its own</source>
        <translation>gib jedem Wagen eine eigene Kennung</translation>
    </message>
    <message>
        <source>give each corner one wheel</source>
        <translation>gib jeder Ecke ein Rad</translation>
    </message>
    <message>
        <source>give each cut a name of its own</source>
        <translation>gib jedem Ausschnitt einen eigenen Namen</translation>
    </message>
    <message>
        <source>give it at least three different points</source>
        <translation>gib ihm mindestens drei verschiedene Punkte</translation>
    </message>
    <message>
        <source>give it in millimetres, or leave it out for sharp edges</source>
        <translation>gib ihn in Millimetern an, oder lass ihn weg für scharfe Kanten</translation>
    </message>
    <message>
        <source>give it one of three points or more</source>
        <translation>gib ihm einen aus drei Punkten oder mehr</translation>
    </message>
    <message>
        <source>give it two finite coordinates</source>
        <translation>gib ihm zwei endliche Koordinaten</translation>
    </message>
    <message>
        <source>give its diameter in millimetres</source>
        <translation>gib den Durchmesser in Millimetern an</translation>
    </message>
    <message>
        <source>give mass_g, or one of {what}</source>
        <translation>gib mass_g an, oder eines von {what}</translation>
    </message>
    <message>
        <source>give one of {what}</source>
        <translation>gib eines an von {what}</translation>
    </message>
    <message>
        <source>give the &quot;id&quot; of a car of this project</source>
        <translation>gib die &quot;id&quot; eines Wagens dieses Projekts an</translation>
    </message>
    <message>
        <source>give the angle it turns by, or make it a straight</source>
        <translation>gib den Winkel an, um den er sich krümmt, oder mach eine Gerade daraus</translation>
    </message>
    <message>
        <source>give the diameter of the sleeve around the bore</source>
        <translation>gib den Durchmesser der Hülse um die Bohrung an</translation>
    </message>
    <message>
        <source>give the name of one of its cuts, or leave it out</source>
        <translation>gib den Namen eines seiner Ausschnitte an, oder lass ihn weg</translation>
    </message>
    <message>
        <source>give the path of the picture&apos;s file</source>
        <translation>gib den Pfad der Bilddatei an</translation>
    </message>
    <message>
        <source>give the station&apos;s own pressure, in hPa</source>
        <translation>gib den Druck am Ort selbst an, in hPa</translation>
    </message>
    <message>
        <source>give the step in which its display counts</source>
        <translation>gib den Schritt an, in dem ihre Anzeige zählt</translation>
    </message>
    <message>
        <source>give two different centres</source>
        <translation>gib zwei verschiedene Mittelpunkte an</translation>
    </message>
    <message>
        <source>give two opposite corners that differ in x, in y and in z</source>
        <translation>gib zwei gegenüberliegende Ecken an, die in x, y und z verschieden sind</translation>
    </message>
    <message>
        <source>give {what}</source>
        <translation>gib {what} an</translation>
    </message>
    <message>
        <source>give {what} numbers</source>
        <translation>gib {what} Zahlen an</translation>
    </message>
    <message>
        <source>greatest height</source>
        <translation>größte Höhe</translation>
    </message>
    <message>
        <source>greatest length</source>
        <translation>größte Länge</translation>
    </message>
    <message>
        <source>greatest mass</source>
        <translation>größte Masse</translation>
    </message>
    <message>
        <source>greatest speed</source>
        <translation>größte Geschwindigkeit</translation>
    </message>
    <message>
        <source>greatest width</source>
        <translation>größte Breite</translation>
    </message>
    <message>
        <source>grip of the treads</source>
        <translation>Haftung der Laufflächen</translation>
    </message>
    <message>
        <source>grip × front load × tanh(creep × (steer − rear toe) / grip) × wheelbase / kick of the bumps</source>
        <translation>Haftung × Vorderachslast × tanh(Schlupf × (Spur − Spur hinten) / Haftung) × Radstand / Stoß der Unebenheiten</translation>
    </message>
    <message>
        <source>grooved axles</source>
        <translation>genutete Achsen</translation>
    </message>
    <message>
        <source>heat time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>height of the front axle</source>
        <translation>Höhe der Vorderachse</translation>
    </message>
    <message>
        <source>height of the rear axle</source>
        <translation>Höhe der Hinterachse</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>hot-melt glue</source>
        <translation>Heißkleber</translation>
    </message>
    <message>
        <source>how a canted tread rolls</source>
        <translation>wie eine Lauffläche mit Sturz rollt</translation>
    </message>
    <message>
        <source>how a digital scale rounds</source>
        <translation>wie eine Digitalwaage rundet</translation>
    </message>
    <message>
        <source>how far down the rail is met</source>
        <translation>wie weit unten die Schiene getroffen wird</translation>
    </message>
    <message>
        <source>how far forward {what} sits</source>
        <translation>wie weit vorn {what} sitzt</translation>
    </message>
    <message>
        <source>how far the lane falls</source>
        <translation>wie tief die Bahn fällt</translation>
    </message>
    <message>
        <source>how hard a bounce rubs</source>
        <translation>wie stark ein Prall reibt</translation>
    </message>
    <message>
        <source>how hard the joints kick</source>
        <translation>wie hart die Fugen stoßen</translation>
    </message>
    <message>
        <source>how high {what} sits</source>
        <translation>wie hoch {what} sitzt</translation>
    </message>
    <message>
        <source>how long the lane is</source>
        <translation>wie lang die Bahn ist</translation>
    </message>
    <message>
        <source>how sharply a car begins to hold the rail</source>
        <translation>wie plötzlich ein Wagen die Schiene zu halten beginnt</translation>
    </message>
    <message>
        <source>how springy a bounce is</source>
        <translation>wie federnd ein Prall ist</translation>
    </message>
    <message>
        <source>how true the axle holes are</source>
        <translation>wie genau die Achslöcher sind</translation>
    </message>
    <message>
        <source>how true the side outline is sawn</source>
        <translation>wie genau der Seitenumriss gesägt ist</translation>
    </message>
    <message>
        <source>how true the top outline is sawn</source>
        <translation>wie genau der Umriss von oben gesägt ist</translation>
    </message>
    <message>
        <source>how true {what} is drilled</source>
        <translation>wie genau {what} gebohrt ist</translation>
    </message>
    <message>
        <source>how uneven the lane is</source>
        <translation>wie uneben die Bahn ist</translation>
    </message>
    <message>
        <source>hub</source>
        <translation>Nabe</translation>
    </message>
    <message>
        <source>in steps of {division}, cut off</source>
        <translation>in Schritten von {division}, abgeschnitten</translation>
    </message>
    <message>
        <source>in steps of {division}, rounded to the nearest</source>
        <translation>in Schritten von {division}, auf den nächsten gerundet</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>es ist ein Ordner</translation>
    </message>
    <message>
        <source>it should be a whole number, {what} for this program</source>
        <translation>es sollte eine ganze Zahl sein, {what} für dieses Programm</translation>
    </message>
    <message>
        <source>join its ends in the drawing program</source>
        <translation>verbinde ihre Enden im Zeichenprogramm</translation>
    </message>
    <message>
        <source>journal friction; friction value to be measured by a spin-down</source>
        <translation>Lagerreibung; der Reibwert ist durch einen Auslauf zu messen</translation>
    </message>
    <message>
        <source>keep a few</source>
        <translation>behalt ein paar</translation>
    </message>
    <message>
        <source>keep its points in their order around the wood</source>
        <translation>halt seine Punkte in der Reihenfolge um das Holz</translation>
    </message>
    <message>
        <source>keep one of them</source>
        <translation>behalt einen davon</translation>
    </message>
    <message>
        <source>kinetic energy</source>
        <translation>Bewegungsenergie</translation>
    </message>
    <message>
        <source>law of the lever</source>
        <translation>Hebelgesetz</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>lead shot, poured loose</source>
        <translation>Bleischrot, lose geschüttet</translation>
    </message>
    <message>
        <source>leave &quot;known&quot; out, or describe the guess by &quot;pieces&quot;</source>
        <translation>lass &quot;known&quot; weg, oder beschreib die Schätzung durch &quot;pieces&quot;</translation>
    </message>
    <message>
        <source>leave a blank instead of the hyphen, or one on either side of it</source>
        <translation>lass statt des Bindestrichs ein Leerzeichen, oder eines auf jeder Seite</translation>
    </message>
    <message>
        <source>leave out the marks between thousands; &quot;.&quot; and &quot;,&quot; both are a decimal mark</source>
        <translation>lass die Zeichen zwischen den Tausendern weg; &quot;.&quot; und &quot;,&quot; sind beide ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>less room than the {tolerance} that tools and gauges can be off by</source>
        <translation>weniger Luft als die {tolerance}, um die Werkzeuge und Lehren danebenliegen können</translation>
    </message>
    <message>
        <source>let one of them touch</source>
        <translation>lass eines davon aufsetzen</translation>
    </message>
    <message>
        <source>lightened wheels</source>
        <translation>erleichterte Räder</translation>
    </message>
    <message>
        <source>liquid weights</source>
        <translation>flüssige Gewichte</translation>
    </message>
    <message>
        <source>list the points from the start gate to the end</source>
        <translation>zähl die Punkte vom Starttor bis zum Ende auf</translation>
    </message>
    <message>
        <source>list the points from the start to the finish, X growing</source>
        <translation>zähl die Punkte vom Start zum Ziel auf, mit wachsendem X</translation>
    </message>
    <message>
        <source>lists and objects nested more than {what} deep</source>
        <translation>Listen und Objekte, tiefer als {what} verschachtelt</translation>
    </message>
    <message>
        <source>look at it yourself</source>
        <translation>sieh selbst nach</translation>
    </message>
    <message>
        <source>loose weights</source>
        <translation>lose Gewichte</translation>
    </message>
    <message>
        <source>low plank</source>
        <translation>flaches Brett</translation>
    </message>
    <message>
        <source>lubricant</source>
        <translation>Schmiermittel</translation>
    </message>
    <message>
        <source>magnets</source>
        <translation>Magnete</translation>
    </message>
    <message>
        <source>make &quot;front_x_mm&quot; larger than &quot;rear_x_mm&quot;</source>
        <translation>mach &quot;front_x_mm&quot; größer als &quot;rear_x_mm&quot;</translation>
    </message>
    <message>
        <source>make room or choose another place; the old file is as it was</source>
        <translation>schaff Platz oder wähl einen anderen Ort; die alte Datei ist unverändert</translation>
    </message>
    <message>
        <source>make them smaller</source>
        <translation>mach sie kleiner</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>mass of a wheel</source>
        <translation>Masse eines Rads</translation>
    </message>
    <message>
        <source>mass × (balance point × cos(slope) + (height of the balance point − height of the nose) × sin(slope)) / wheelbase</source>
        <translation>Masse × (Schwerpunkt × cos(Gefälle) + (Höhe des Schwerpunkts − Höhe der Nase) × sin(Gefälle)) / Radstand</translation>
    </message>
    <message>
        <source>mass × balance point / wheelbase</source>
        <translation>Masse × Schwerpunkt / Radstand</translation>
    </message>
    <message>
        <source>mass × gravity × drop of the centre of mass</source>
        <translation>Masse × Erdbeschleunigung × Fall des Schwerpunkts</translation>
    </message>
    <message>
        <source>masses add up</source>
        <translation>Massen addieren sich</translation>
    </message>
    <message>
        <source>material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>measure it from the rim inward, beside the web</source>
        <translation>miss sie vom Rand nach innen, neben der Scheibe</translation>
    </message>
    <message>
        <source>measure the height at more places, closest together where the slope changes</source>
        <translation>miss die Höhe an mehr Stellen, am dichtesten dort, wo sich das Gefälle ändert</translation>
    </message>
    <message>
        <source>modelling clay</source>
        <translation>Knetmasse</translation>
    </message>
    <message>
        <source>moments about the rear wheels&apos; foot; docs/model.md, Standing</source>
        <translation>Momente um den Fuß der Hinterräder; docs/model.md, Standing</translation>
    </message>
    <message>
        <source>more cells than headings; a decimal comma needs tabs or semicolons between the columns</source>
        <translation>mehr Zellen als Überschriften; ein Dezimalkomma braucht Tabulatoren oder Semikolons zwischen den Spalten</translation>
    </message>
    <message>
        <source>more than a hundred weighings</source>
        <translation>mehr als hundert Wägungen</translation>
    </message>
    <message>
        <source>move a cut there by a tenth of a millimetre</source>
        <translation>verschieb dort einen Ausschnitt um einen Zehntelmillimeter</translation>
    </message>
    <message>
        <source>move it between the ends of the plan outline</source>
        <translation>verschieb sie zwischen die Enden des Umrisses von oben</translation>
    </message>
    <message>
        <source>move one of the points so that the outline runs around the wood once</source>
        <translation>verschieb einen der Punkte, bis der Umriss einmal um das Holz läuft</translation>
    </message>
    <message>
        <source>move the cuts that nearly touch one another by a tenth of a millimetre</source>
        <translation>verschieb die Ausschnitte, die sich fast berühren, um einen Zehntelmillimeter</translation>
    </message>
    <message>
        <source>name a file in it</source>
        <translation>nenn eine Datei darin</translation>
    </message>
    <message>
        <source>name an ordinary file</source>
        <translation>nenn eine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>narrow waist</source>
        <translation>schmale Taille</translation>
    </message>
    <message>
        <source>neither front wheel touches</source>
        <translation>keines der Vorderräder setzt auf</translation>
    </message>
    <message>
        <source>next move of tuning</source>
        <translation>nächster Schritt beim Einstellen</translation>
    </message>
    <message>
        <source>nickel</source>
        <translation>Nickel</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no car has the id &quot;{what}&quot;</source>
        <translation>kein Wagen hat die Kennung &quot;{what}&quot;</translation>
    </message>
    <message>
        <source>no car was chosen</source>
        <translation>kein Wagen wurde gewählt</translation>
    </message>
    <message>
        <source>no cut of this car has the name &quot;{what}&quot;</source>
        <translation>kein Ausschnitt dieses Wagens heißt &quot;{what}&quot;</translation>
    </message>
    <message>
        <source>no figure of the model depends on the kind of lubricant, only on the friction it leaves</source>
        <translation>keine Zahl des Modells hängt von der Art des Schmiermittels ab, nur von der Reibung, die es lässt</translation>
    </message>
    <message>
        <source>no more than {n} of &quot;{piece}&quot; are left on the shelf</source>
        <translation>im Regal sind nicht mehr als {n} von &quot;{piece}&quot; übrig</translation>
    </message>
    <message>
        <source>no object stands here</source>
        <translation>hier steht kein Objekt</translation>
    </message>
    <message>
        <source>no wheel at {what}</source>
        <translation>kein Rad bei {what}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>northern red oak</source>
        <translation>Roteiche</translation>
    </message>
    <message>
        <source>nose at the start pin</source>
        <translation>Nase am Startstift</translation>
    </message>
    <message>
        <source>not a positive value</source>
        <translation>kein positiver Wert</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>nicht erlaubt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing is colder than -273.15 °C</source>
        <translation>kälter als -273,15 °C ist nichts</translation>
    </message>
    <message>
        <source>nothing is written here</source>
        <translation>hier steht nichts</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>nut M3</source>
        <translation>Mutter M3</translation>
    </message>
    <message>
        <source>nut M4</source>
        <translation>Mutter M4</translation>
    </message>
    <message>
        <source>nut M5</source>
        <translation>Mutter M5</translation>
    </message>
    <message>
        <source>nut M6</source>
        <translation>Mutter M6</translation>
    </message>
    <message>
        <source>nut M8</source>
        <translation>Mutter M8</translation>
    </message>
    <message>
        <source>on {day} or later</source>
        <translation>am {day} oder später</translation>
    </message>
    <message>
        <source>one between the ends is locked, or in wood that is drilled</source>
        <translation>eins zwischen den Enden ist fest, oder in gebohrtem Holz</translation>
    </message>
    <message>
        <source>one run differing from the next</source>
        <translation>ein Lauf, der vom nächsten abweicht</translation>
    </message>
    <message>
        <source>one small wood screw</source>
        <translation>eine kleine Holzschraube</translation>
    </message>
    <message>
        <source>only a person can tell</source>
        <translation>das kann nur ein Mensch beurteilen</translation>
    </message>
    <message>
        <source>open a file whose &quot;format&quot; is &quot;rampwright-project&quot;</source>
        <translation>öffne eine Datei, deren &quot;format&quot; &quot;rampwright-project&quot; ist</translation>
    </message>
    <message>
        <source>open it with a newer Rampwright</source>
        <translation>öffne sie mit einem neueren Rampwright</translation>
    </message>
    <message>
        <source>open the file they come from here, and copy them again</source>
        <translation>öffne hier die Datei, aus der sie kommen, und kopier sie noch einmal</translation>
    </message>
    <message>
        <source>other axles</source>
        <translation>andere Achsen</translation>
    </message>
    <message>
        <source>other wheels</source>
        <translation>andere Räder</translation>
    </message>
    <message>
        <source>outer diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>paint, dry</source>
        <translation>Farbe, trocken</translation>
    </message>
    <message>
        <source>paper clip, small</source>
        <translation>Büroklammer, klein</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>besteht</translation>
    </message>
    <message>
        <source>passes narrowly</source>
        <translation>besteht knapp</translation>
    </message>
    <message>
        <source>paste into a car that is not drilled yet</source>
        <translation>füg in einen Wagen ein, der noch nicht gebohrt ist</translation>
    </message>
    <message>
        <source>paulownia</source>
        <translation>Paulownia</translation>
    </message>
    <message>
        <source>permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>piece {n}</source>
        <translation>Stück {n}</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>place of the front axle</source>
        <translation>Ort der Vorderachse</translation>
    </message>
    <message>
        <source>place of the nose</source>
        <translation>Ort der Nase</translation>
    </message>
    <message>
        <source>place of the rear axle</source>
        <translation>Ort der Hinterachse</translation>
    </message>
    <message>
        <source>plain block</source>
        <translation>einfacher Klotz</translation>
    </message>
    <message>
        <source>polished axles</source>
        <translation>polierte Achsen</translation>
    </message>
    <message>
        <source>ponderosa pine</source>
        <translation>Gelb-Kiefer</translation>
    </message>
    <message>
        <source>potential energy</source>
        <translation>Lageenergie</translation>
    </message>
    <message>
        <source>pressed in, nothing added</source>
        <translation>eingedrückt, nichts dazu</translation>
    </message>
    <message>
        <source>pressure × molar mass / (compressibility × gas constant × temperature) × (1 − vapour&apos;s share × (1 − its molar mass / dry air&apos;s))</source>
        <translation>Druck × molare Masse / (Realgasfaktor × Gaskonstante × Temperatur) × (1 − Anteil des Dampfs × (1 − seine molare Masse / die trockener Luft))</translation>
    </message>
    <message>
        <source>put the lines further apart</source>
        <translation>setz die Linien weiter auseinander</translation>
    </message>
    <message>
        <source>raised wheel</source>
        <translation>angehobenes Rad</translation>
    </message>
    <message>
        <source>read the speed more often while the wheel slows down</source>
        <translation>lies die Drehzahl öfter ab, während das Rad langsamer wird</translation>
    </message>
    <message>
        <source>reads {reads}; it reads legal below a true {bound}: {margin} left</source>
        <translation>zeigt {reads}; erlaubt ist die Anzeige unter wahren {bound}: {margin} übrig</translation>
    </message>
    <message>
        <source>reads {reads}; it reads legal below a true {bound}: {margin} too much</source>
        <translation>zeigt {reads}; erlaubt ist die Anzeige unter wahren {bound}: {margin} zu viel</translation>
    </message>
    <message>
        <source>rear left</source>
        <translation>hinten links</translation>
    </message>
    <message>
        <source>rear load</source>
        <translation>Hinterachslast</translation>
    </message>
    <message>
        <source>rear right</source>
        <translation>hinten rechts</translation>
    </message>
    <message>
        <source>rear x</source>
        <translation>hinten x</translation>
    </message>
    <message>
        <source>red maple</source>
        <translation>Rot-Ahorn</translation>
    </message>
    <message>
        <source>repair the file</source>
        <translation>bring die Datei in Ordnung</translation>
    </message>
    <message>
        <source>rolling resistance</source>
        <translation>Rollwiderstand</translation>
    </message>
    <message>
        <source>room to the limit</source>
        <translation>Luft bis zur Grenze</translation>
    </message>
    <message>
        <source>rule of the house</source>
        <translation>Hausregel</translation>
    </message>
    <message>
        <source>runout</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>save the drawing again from the program that made it</source>
        <translation>speicher die Zeichnung noch einmal mit dem Programm, das sie gemacht hat</translation>
    </message>
    <message>
        <source>set &quot;touches&quot; of at least one of them to true</source>
        <translation>setz &quot;touches&quot; bei mindestens einem davon auf true</translation>
    </message>
    <message>
        <source>side outline</source>
        <translation>Seitenumriss</translation>
    </message>
    <message>
        <source>silver maple</source>
        <translation>Silber-Ahorn</translation>
    </message>
    <message>
        <source>simplify it in the drawing program, or check its scale</source>
        <translation>vereinfach sie im Zeichenprogramm, oder prüf ihren Maßstab</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>size of the front wheels</source>
        <translation>Größe der Vorderräder</translation>
    </message>
    <message>
        <source>size of the rear wheels</source>
        <translation>Größe der Hinterräder</translation>
    </message>
    <message>
        <source>size of the wheels&apos; bores</source>
        <translation>Größe der Radbohrungen</translation>
    </message>
    <message>
        <source>slopes are negative downhill; give {what} with a minus</source>
        <translation>Gefälle bergab ist negativ; gib {what} mit einem Minus an</translation>
    </message>
    <message>
        <source>smallest front load on the way</source>
        <translation>kleinste Vorderachslast unterwegs</translation>
    </message>
    <message>
        <source>sort the readings by time and leave out repeated ones</source>
        <translation>ordne die Ablesungen nach der Zeit und lass doppelte weg</translation>
    </message>
    <message>
        <source>speed at the finish</source>
        <translation>Geschwindigkeit im Ziel</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>square root of the sum of squares: what one sigma of each uncertain value is worth, the largest first, the last term all others together</source>
        <translation>Wurzel aus der Summe der Quadrate: was ein Sigma jedes unsicheren Werts wert ist, der größte zuerst, das letzte Glied alle anderen zusammen</translation>
    </message>
    <message>
        <source>stainless steel</source>
        <translation>Edelstahl</translation>
    </message>
    <message>
        <source>start it with a line such as: name, finish, diameter_mm, bow_mm</source>
        <translation>beginn sie mit einer Zeile wie: name, finish, diameter_mm, bow_mm</translation>
    </message>
    <message>
        <source>start it with a line such as: name, mass_g, diameter_mm, runout_mm, bore_mm, spin_s</source>
        <translation>beginn sie mit einer Zeile wie: name, mass_g, diameter_mm, runout_mm, bore_mm, spin_s</translation>
    </message>
    <message>
        <source>steel ball 10 mm</source>
        <translation>Stahlkugel 10 mm</translation>
    </message>
    <message>
        <source>steel ball 12 mm</source>
        <translation>Stahlkugel 12 mm</translation>
    </message>
    <message>
        <source>steel ball 6 mm</source>
        <translation>Stahlkugel 6 mm</translation>
    </message>
    <message>
        <source>steel ball 8 mm</source>
        <translation>Stahlkugel 8 mm</translation>
    </message>
    <message>
        <source>steer</source>
        <translation>Spur</translation>
    </message>
    <message>
        <source>steer of the front wheel</source>
        <translation>Spur des Vorderrads</translation>
    </message>
    <message>
        <source>steered wheels</source>
        <translation>Räder mit Spur</translation>
    </message>
    <message>
        <source>stiffness of the treads against slipping aside</source>
        <translation>Steifigkeit der Laufflächen gegen Wegrutschen</translation>
    </message>
    <message>
        <source>stops after</source>
        <translation>bleibt stehen nach</translation>
    </message>
    <message>
        <source>sugar maple</source>
        <translation>Zucker-Ahorn</translation>
    </message>
    <message>
        <source>sugar pine</source>
        <translation>Zucker-Kiefer</translation>
    </message>
    <message>
        <source>sum of (mass × distance ahead of the rear axle) / whole mass; from the weighed front load, if there is one: front load × wheelbase / mass</source>
        <translation>Summe von (Masse × Abstand vor der Hinterachse) / ganze Masse; aus der gewogenen Vorderachslast, wenn es eine gibt: Vorderachslast × Radstand / Masse</translation>
    </message>
    <message>
        <source>take another piece, or raise the shelf&apos;s count</source>
        <translation>nimm ein anderes Stück, oder erhöh die Anzahl im Regal</translation>
    </message>
    <message>
        <source>take fewer, or raise the shelf&apos;s count</source>
        <translation>nimm weniger, oder erhöh die Anzahl im Regal</translation>
    </message>
    <message>
        <source>take it from there</source>
        <translation>nimm es von dort</translation>
    </message>
    <message>
        <source>take it out</source>
        <translation>nimm sie heraus</translation>
    </message>
    <message>
        <source>take one of them out</source>
        <translation>nimm eine davon heraus</translation>
    </message>
    <message>
        <source>take the piece out of it first, or choose another</source>
        <translation>nimm zuerst das Stück heraus, oder wähl ein anderes</translation>
    </message>
    <message>
        <source>the air&apos;s pressure is not between 500 and 1200 hPa</source>
        <translation>der Luftdruck liegt nicht zwischen 500 und 1200 hPa</translation>
    </message>
    <message>
        <source>the air&apos;s temperature is not between -20 and 60 °C</source>
        <translation>die Lufttemperatur liegt nicht zwischen -20 und 60 °C</translation>
    </message>
    <message>
        <source>the altitude is not between -5000 and 11 000 m</source>
        <translation>die Höhe liegt nicht zwischen -5000 und 11 000 m</translation>
    </message>
    <message>
        <source>the axle&apos;s head is not wider than its shank</source>
        <translation>der Kopf der Achse ist nicht breiter als ihr Schaft</translation>
    </message>
    <message>
        <source>the balance point as found</source>
        <translation>der gefundene Schwerpunkt</translation>
    </message>
    <message>
        <source>the body has no outline here</source>
        <translation>der Körper hat hier keinen Umriss</translation>
    </message>
    <message>
        <source>the body&apos;s surface could not be closed</source>
        <translation>die Oberfläche des Körpers ließ sich nicht schließen</translation>
    </message>
    <message>
        <source>the bore is not wider than the axle&apos;s shank ({what} mm)</source>
        <translation>die Bohrung ist nicht weiter als der Schaft der Achse ({what} mm)</translation>
    </message>
    <message>
        <source>the bore is wider than the wheel</source>
        <translation>die Bohrung ist weiter als das Rad</translation>
    </message>
    <message>
        <source>the bore&apos;s diameter is not a length of zero or more</source>
        <translation>der Durchmesser der Bohrung ist keine Länge von null oder mehr</translation>
    </message>
    <message>
        <source>the bore&apos;s ends are not numbers</source>
        <translation>die Enden der Bohrung sind keine Zahlen</translation>
    </message>
    <message>
        <source>the brackets are nested too deep</source>
        <translation>die Klammern sind zu tief verschachtelt</translation>
    </message>
    <message>
        <source>the car&apos;s weight as weighed</source>
        <translation>das gewogene Gewicht des Wagens</translation>
    </message>
    <message>
        <source>the clipboard holds far more than pieces of a car</source>
        <translation>die Zwischenablage enthält weit mehr als Stücke eines Wagens</translation>
    </message>
    <message>
        <source>the clipboard holds no pieces of a car</source>
        <translation>die Zwischenablage enthält keine Stücke eines Wagens</translation>
    </message>
    <message>
        <source>the clipboard is empty</source>
        <translation>die Zwischenablage ist leer</translation>
    </message>
    <message>
        <source>the clipboard&apos;s pieces are damaged</source>
        <translation>die Stücke der Zwischenablage sind beschädigt</translation>
    </message>
    <message>
        <source>the clock&apos;s zero</source>
        <translation>der Nullpunkt der Uhr</translation>
    </message>
    <message>
        <source>the cut it lies in</source>
        <translation>der Ausschnitt, in dem es liegt</translation>
    </message>
    <message>
        <source>the cuts leave no wood</source>
        <translation>die Ausschnitte lassen kein Holz übrig</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the distance is not greater than nothing</source>
        <translation>der Abstand ist nicht größer als null</translation>
    </message>
    <message>
        <source>the edge radius is not a length of zero or more</source>
        <translation>der Kantenradius ist keine Länge von null oder mehr</translation>
    </message>
    <message>
        <source>the file does not say when the car was built</source>
        <translation>die Datei sagt nicht, wann der Wagen gebaut wurde</translation>
    </message>
    <message>
        <source>the file has no part for it</source>
        <translation>die Datei hat kein Teil dafür</translation>
    </message>
    <message>
        <source>the file has no part for it; a nose too high for the pin is decided</source>
        <translation>die Datei hat kein Teil dafür; eine für den Stift zu hohe Nase wird entschieden</translation>
    </message>
    <message>
        <source>the file has no part for them</source>
        <translation>die Datei hat kein Teil dafür</translation>
    </message>
    <message>
        <source>the file has one shank diameter for an axle</source>
        <translation>die Datei hat einen Schaftdurchmesser je Achse</translation>
    </message>
    <message>
        <source>the file has the friction that is left, not how the axle was worked</source>
        <translation>die Datei hat die Reibung, die bleibt, nicht wie die Achse bearbeitet wurde</translation>
    </message>
    <message>
        <source>the file is larger than {what} MiB</source>
        <translation>die Datei ist größer als {what} MiB</translation>
    </message>
    <message>
        <source>the file is of version {what}, newer than this program reads ({other})</source>
        <translation>die Datei hat die Version {what}, neuer als dieses Programm lesen kann ({other})</translation>
    </message>
    <message>
        <source>the file says what a wheel measures, not how it was worked</source>
        <translation>die Datei sagt, welche Maße ein Rad hat, nicht wie es bearbeitet wurde</translation>
    </message>
    <message>
        <source>the file says what a wheel measures, not where it comes from</source>
        <translation>die Datei sagt, welche Maße ein Rad hat, nicht woher es kommt</translation>
    </message>
    <message>
        <source>the file says what a wheel weighs, not how it came to it; a least mass of a wheel is decided</source>
        <translation>die Datei sagt, was ein Rad wiegt, nicht wie es dazu kam; eine kleinste Masse eines Rads wird entschieden</translation>
    </message>
    <message>
        <source>the file says what an axle measures, not where it comes from</source>
        <translation>die Datei sagt, welche Maße eine Achse hat, nicht woher sie kommt</translation>
    </message>
    <message>
        <source>the file says where a weight lies, not how well it is held</source>
        <translation>die Datei sagt, wo ein Gewicht liegt, nicht wie gut es hält</translation>
    </message>
    <message>
        <source>the file&apos;s materials are solid; what else is in the car it does not know</source>
        <translation>die Materialien der Datei sind fest; was sonst im Wagen ist, weiß sie nicht</translation>
    </message>
    <message>
        <source>the finish line is not beyond the start line</source>
        <translation>die Ziellinie liegt nicht hinter der Startlinie</translation>
    </message>
    <message>
        <source>the finish line is reached before the start</source>
        <translation>die Ziellinie kommt vor dem Start</translation>
    </message>
    <message>
        <source>the front axle is not at least 10 mm ahead of the rear axle</source>
        <translation>die Vorderachse liegt nicht mindestens 10 mm vor der Hinterachse</translation>
    </message>
    <message>
        <source>the front load as weighed</source>
        <translation>die gewogene Vorderachslast</translation>
    </message>
    <message>
        <source>the height of the balance point as found</source>
        <translation>die gefundene Höhe des Schwerpunkts</translation>
    </message>
    <message>
        <source>the hub does not lie between bore and tread</source>
        <translation>die Nabe liegt nicht zwischen Bohrung und Lauffläche</translation>
    </message>
    <message>
        <source>the hyphen may join a fraction or subtract it</source>
        <translation>der Bindestrich kann einen Bruch anhängen oder ihn abziehen</translation>
    </message>
    <message>
        <source>the key &quot;{what}&quot; stands twice in one object</source>
        <translation>der Schlüssel &quot;{what}&quot; steht zweimal in einem Objekt</translation>
    </message>
    <message>
        <source>the latitude is not between -90 and 90 degrees</source>
        <translation>die Breite liegt nicht zwischen -90 und 90 Grad</translation>
    </message>
    <message>
        <source>the line encloses nothing</source>
        <translation>die Linie umschließt nichts</translation>
    </message>
    <message>
        <source>the line has too many points to be followed</source>
        <translation>die Linie hat zu viele Punkte, um ihr zu folgen</translation>
    </message>
    <message>
        <source>the line is not closed</source>
        <translation>die Linie ist nicht geschlossen</translation>
    </message>
    <message>
        <source>the list has no element &quot;{what}&quot;</source>
        <translation>die Liste hat kein Element &quot;{what}&quot;</translation>
    </message>
    <message>
        <source>the list of pieces is empty</source>
        <translation>die Liste der Stücke ist leer</translation>
    </message>
    <message>
        <source>the mass is missing, and the material &quot;{what}&quot; is not in the table</source>
        <translation>die Masse fehlt, und das Material &quot;{what}&quot; steht nicht in der Tabelle</translation>
    </message>
    <message>
        <source>the model&apos;s car is rigid</source>
        <translation>der Wagen des Modells ist starr</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>der Name ist zu lang</translation>
    </message>
    <message>
        <source>the number {number}</source>
        <translation>die Zahl {number}</translation>
    </message>
    <message>
        <source>the only one of &quot;{piece}&quot; on the shelf is in the car</source>
        <translation>das einzige Stück &quot;{piece}&quot; aus dem Regal ist im Wagen</translation>
    </message>
    <message>
        <source>the outline touches or crosses itself: the stretch from this point meets the one from point {what}</source>
        <translation>der Umriss berührt oder kreuzt sich: das Stück ab diesem Punkt trifft das ab Punkt {what}</translation>
    </message>
    <message>
        <source>the outline would touch or cross itself</source>
        <translation>der Umriss würde sich berühren oder kreuzen</translation>
    </message>
    <message>
        <source>the path does not begin with a move</source>
        <translation>der Pfad beginnt nicht mit einer Bewegung</translation>
    </message>
    <message>
        <source>the path has a command that is none</source>
        <translation>der Pfad hat einen Befehl, den es nicht gibt</translation>
    </message>
    <message>
        <source>the picture would be more than a hundred metres wide</source>
        <translation>das Bild wäre mehr als hundert Meter breit</translation>
    </message>
    <message>
        <source>the pieces were copied by another version of Rampwright</source>
        <translation>die Stücke wurden von einer anderen Version von Rampwright kopiert</translation>
    </message>
    <message>
        <source>the place is read-only</source>
        <translation>der Ort lässt nur Lesen zu</translation>
    </message>
    <message>
        <source>the plan cants or steers a wheel and does not say whether by a bent axle or a slanted hole</source>
        <translation>der Plan gibt einem Rad Sturz oder Spur und sagt nicht, ob durch eine gebogene Achse oder ein schräges Loch</translation>
    </message>
    <message>
        <source>the pocket&apos;s corners are not numbers</source>
        <translation>die Ecken der Tasche sind keine Zahlen</translation>
    </message>
    <message>
        <source>the project as a whole is not one value</source>
        <translation>das Projekt als Ganzes ist kein einzelner Wert</translation>
    </message>
    <message>
        <source>the rear axle is not behind the front axle</source>
        <translation>die Hinterachse liegt nicht hinter der Vorderachse</translation>
    </message>
    <message>
        <source>the relative humidity is not between 0 and 100 %</source>
        <translation>die Luftfeuchte liegt nicht zwischen 0 und 100 %</translation>
    </message>
    <message>
        <source>the scale reads</source>
        <translation>die Waage zeigt</translation>
    </message>
    <message>
        <source>the scale&apos;s division is not above zero</source>
        <translation>der Schritt der Waage ist nicht größer als null</translation>
    </message>
    <message>
        <source>the scale&apos;s offset is no number</source>
        <translation>der Fehler der Waage ist keine Zahl</translation>
    </message>
    <message>
        <source>the smallest is above the largest</source>
        <translation>der kleinste liegt über dem größten</translation>
    </message>
    <message>
        <source>the surface turns upward about as tightly as a wheel</source>
        <translation>die Bahn krümmt sich etwa so eng nach oben wie ein Rad</translation>
    </message>
    <message>
        <source>the table has no heading line that names a column of axles</source>
        <translation>die Tabelle hat keine Kopfzeile, die eine Spalte für Achsen nennt</translation>
    </message>
    <message>
        <source>the table has no heading line that names a measured column</source>
        <translation>die Tabelle hat keine Kopfzeile, die eine gemessene Spalte nennt</translation>
    </message>
    <message>
        <source>the table of materials does not know what one of the weights is made of</source>
        <translation>die Tabelle der Materialien weiß nicht, woraus eines der Gewichte ist</translation>
    </message>
    <message>
        <source>the text is not JSON: {what}</source>
        <translation>der Text ist kein JSON: {what}</translation>
    </message>
    <message>
        <source>the text {text}</source>
        <translation>der Text {text}</translation>
    </message>
    <message>
        <source>the time on each piece of the track one after the other, and the clock&apos;s offset; on each piece it is the sum of (a little way / the speed there), the speeds from the forces at each place</source>
        <translation>die Zeit auf jedem Stück der Bahn nacheinander, und der Fehler der Uhr; auf jedem Stück ist es die Summe von (ein kleiner Weg / Geschwindigkeit dort), die Geschwindigkeiten aus den Kräften an jeder Stelle</translation>
    </message>
    <message>
        <source>the times of a spin-down curve do not increase</source>
        <translation>die Zeiten der Auslaufkurve steigen nicht</translation>
    </message>
    <message>
        <source>the times of a spin-down do not rise</source>
        <translation>die Zeiten eines Auslaufs steigen nicht an</translation>
    </message>
    <message>
        <source>the track has no shape</source>
        <translation>die Bahn hat keine Form</translation>
    </message>
    <message>
        <source>the track is given twice, by &quot;pieces&quot; and by &quot;measured_mm&quot;</source>
        <translation>die Bahn ist zweimal gegeben, durch &quot;pieces&quot; und durch &quot;measured_mm&quot;</translation>
    </message>
    <message>
        <source>the tread is thicker than the wheel from bore to rim</source>
        <translation>die Lauffläche ist dicker als das Rad von der Bohrung bis zum Rand</translation>
    </message>
    <message>
        <source>the two places on the picture are one</source>
        <translation>die beiden Stellen auf dem Bild sind dieselbe</translation>
    </message>
    <message>
        <source>the value is too large</source>
        <translation>der Wert ist zu groß</translation>
    </message>
    <message>
        <source>the version of the format is missing or damaged</source>
        <translation>die Version des Formats fehlt oder ist beschädigt</translation>
    </message>
    <message>
        <source>the web is thicker than the wheel is wide</source>
        <translation>die Scheibe ist dicker, als das Rad breit ist</translation>
    </message>
    <message>
        <source>the wheel does not slow down by friction in these readings</source>
        <translation>das Rad wird nach diesen Ablesungen nicht durch Reibung langsamer</translation>
    </message>
    <message>
        <source>the wood &quot;{what}&quot; is not in the table</source>
        <translation>das Holz &quot;{what}&quot; steht nicht in der Tabelle</translation>
    </message>
    <message>
        <source>the wood is drilled, and &quot;{cut}&quot; lies to one side of the centre line</source>
        <translation>das Holz ist gebohrt, und &quot;{cut}&quot; liegt neben der Mittellinie</translation>
    </message>
    <message>
        <source>the wood of this car is drilled, and it has no &quot;{cut}&quot; in that place</source>
        <translation>das Holz dieses Wagens ist gebohrt, und es hat an dieser Stelle kein &quot;{cut}&quot;</translation>
    </message>
    <message>
        <source>the {what} wheel does not touch</source>
        <translation>das Rad {what} setzt nicht auf</translation>
    </message>
    <message>
        <source>there is no such ballast piece</source>
        <translation>dieses Ballaststück gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such car</source>
        <translation>diesen Wagen gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such cut</source>
        <translation>diesen Ausschnitt gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such file or folder</source>
        <translation>eine solche Datei oder einen solchen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such place in the lane</source>
        <translation>diese Stelle gibt es in der Bahn nicht</translation>
    </message>
    <message>
        <source>there is no such {what}</source>
        <translation>so etwas gibt es nicht: {what}</translation>
    </message>
    <message>
        <source>there is no wheel at {what}</source>
        <translation>es gibt kein Rad {what}</translation>
    </message>
    <message>
        <source>there is nothing between them to move</source>
        <translation>dazwischen ist nichts zu verschieben</translation>
    </message>
    <message>
        <source>there is nothing to align it to</source>
        <translation>es gibt nichts, woran es sich ausrichten ließe</translation>
    </message>
    <message>
        <source>this file holds no lane</source>
        <translation>in dieser Datei ist keine Bahn</translation>
    </message>
    <message>
        <source>this is no JSON pointer</source>
        <translation>das ist kein JSON-Zeiger</translation>
    </message>
    <message>
        <source>this is not a Rampwright project</source>
        <translation>das ist kein Rampwright-Projekt</translation>
    </message>
    <message>
        <source>this lane is given by measured points</source>
        <translation>diese Bahn ist durch gemessene Punkte gegeben</translation>
    </message>
    <message>
        <source>this point is not a number</source>
        <translation>dieser Punkt ist keine Zahl</translation>
    </message>
    <message>
        <source>this program does not know the rule</source>
        <translation>dieses Programm kennt die Regel nicht</translation>
    </message>
    <message>
        <source>this sign is not understood here</source>
        <translation>dieses Zeichen ist hier nicht verständlich</translation>
    </message>
    <message>
        <source>thrust collar, Engineering Statics (Baker and Haynes)</source>
        <translation>Bundlager, Engineering Statics (Baker und Haynes)</translation>
    </message>
    <message>
        <source>tin</source>
        <translation>Zinn</translation>
    </message>
    <message>
        <source>titanium</source>
        <translation>Titan</translation>
    </message>
    <message>
        <source>top outline</source>
        <translation>Umriss von oben</translation>
    </message>
    <message>
        <source>touches the lane</source>
        <translation>berührt die Bahn</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>try again, or choose another place</source>
        <translation>versuch es noch einmal, oder wähl einen anderen Ort</translation>
    </message>
    <message>
        <source>tungsten</source>
        <translation>Wolfram</translation>
    </message>
    <message>
        <source>tungsten heavy alloy</source>
        <translation>Wolfram-Schwermetall</translation>
    </message>
    <message>
        <source>tungsten putty</source>
        <translation>Wolframknete</translation>
    </message>
    <message>
        <source>turned or sanded treads</source>
        <translation>gedrehte oder geschliffene Laufflächen</translation>
    </message>
    <message>
        <source>two cars have the id &quot;{what}&quot;</source>
        <translation>zwei Wagen haben die Kennung &quot;{what}&quot;</translation>
    </message>
    <message>
        <source>two cuts of this car have the name &quot;{what}&quot;</source>
        <translation>zwei Ausschnitte dieses Wagens heißen &quot;{what}&quot;</translation>
    </message>
    <message>
        <source>two numbers stand side by side</source>
        <translation>zwei Zahlen stehen nebeneinander</translation>
    </message>
    <message>
        <source>two steps</source>
        <translation>zwei Stufen</translation>
    </message>
    <message>
        <source>two wheels at {what}</source>
        <translation>zwei Räder bei {what}</translation>
    </message>
    <message>
        <source>type a higher temperature</source>
        <translation>tipp eine höhere Temperatur</translation>
    </message>
    <message>
        <source>type a number such as 0.15</source>
        <translation>tipp eine Zahl wie 0,15</translation>
    </message>
    <message>
        <source>type a smaller number</source>
        <translation>tipp eine kleinere Zahl</translation>
    </message>
    <message>
        <source>type an ordinary number</source>
        <translation>tipp eine gewöhnliche Zahl</translation>
    </message>
    <message>
        <source>type how far they are apart</source>
        <translation>tipp, wie weit sie auseinander liegen</translation>
    </message>
    <message>
        <source>type one temperature</source>
        <translation>tipp eine Temperatur</translation>
    </message>
    <message>
        <source>type {quantity} such as 12 {unit}</source>
        <translation>tipp {quantity} wie 12 {unit}</translation>
    </message>
    <message>
        <source>unlock it first</source>
        <translation>löse es zuerst</translation>
    </message>
    <message>
        <source>unlock it, or choose something else</source>
        <translation>löse es, oder wähl etwas anderes</translation>
    </message>
    <message>
        <source>unlock it, or leave it out</source>
        <translation>löse es, oder lass es weg</translation>
    </message>
    <message>
        <source>use one of {what}</source>
        <translation>nimm eines von {what}</translation>
    </message>
    <message>
        <source>washer for M10</source>
        <translation>Unterlegscheibe für M10</translation>
    </message>
    <message>
        <source>washer for M3</source>
        <translation>Unterlegscheibe für M3</translation>
    </message>
    <message>
        <source>washer for M4</source>
        <translation>Unterlegscheibe für M4</translation>
    </message>
    <message>
        <source>washer for M5</source>
        <translation>Unterlegscheibe für M5</translation>
    </message>
    <message>
        <source>washer for M6</source>
        <translation>Unterlegscheibe für M6</translation>
    </message>
    <message>
        <source>washer for M8</source>
        <translation>Unterlegscheibe für M8</translation>
    </message>
    <message>
        <source>wave</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>Keil</translation>
    </message>
    <message>
        <source>weigh at least four wheels</source>
        <translation>wieg mindestens vier Räder</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>weight at the balance point</source>
        <translation>Gewicht am Schwerpunkt</translation>
    </message>
    <message>
        <source>weight of the axles</source>
        <translation>Gewicht der Achsen</translation>
    </message>
    <message>
        <source>weight of the finish</source>
        <translation>Gewicht des Lacks</translation>
    </message>
    <message>
        <source>weight of the wheels</source>
        <translation>Gewicht der Räder</translation>
    </message>
    <message>
        <source>weight of the wood</source>
        <translation>Gewicht des Holzes</translation>
    </message>
    <message>
        <source>weight of the {what} wheel</source>
        <translation>Gewicht des Rads {what}</translation>
    </message>
    <message>
        <source>weight of what holds {what}</source>
        <translation>Gewicht dessen, was {what} hält</translation>
    </message>
    <message>
        <source>weight of {what}</source>
        <translation>Gewicht von {what}</translation>
    </message>
    <message>
        <source>western redcedar</source>
        <translation>Riesen-Lebensbaum</translation>
    </message>
    <message>
        <source>western white pine</source>
        <translation>Westliche Weymouth-Kiefer</translation>
    </message>
    <message>
        <source>what holds it</source>
        <translation>was es hält</translation>
    </message>
    <message>
        <source>what is chosen is its own mirror image, or has one already</source>
        <translation>was gewählt ist, ist sein eigenes Spiegelbild oder hat schon eines</translation>
    </message>
    <message>
        <source>what was copied does not read: {problem}</source>
        <translation>das Kopierte lässt sich nicht lesen: {problem}</translation>
    </message>
    <message>
        <source>wheel diameter, greatest</source>
        <translation>Raddurchmesser, größter</translation>
    </message>
    <message>
        <source>wheel diameter, least</source>
        <translation>Raddurchmesser, kleinster</translation>
    </message>
    <message>
        <source>wheel width</source>
        <translation>Radbreite</translation>
    </message>
    <message>
        <source>wheel {corner}</source>
        <translation>Rad {corner}</translation>
    </message>
    <message>
        <source>wheelbase, greatest</source>
        <translation>Radstand, größter</translation>
    </message>
    <message>
        <source>wheelbase, least</source>
        <translation>Radstand, kleinster</translation>
    </message>
    <message>
        <source>wheels that touch</source>
        <translation>aufsetzende Räder</translation>
    </message>
    <message>
        <source>whole car</source>
        <translation>ganzer Wagen</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>wood + finish + axles + wheels + weights + what holds them; where the car was weighed, the last term is what the scale says beyond that</source>
        <translation>Holz + Lack + Achsen + Räder + Gewichte + was sie hält; wo der Wagen gewogen wurde, ist das letzte Glied, was die Waage darüber hinaus sagt</translation>
    </message>
    <message>
        <source>wood filler, dry</source>
        <translation>Holzspachtel, trocken</translation>
    </message>
    <message>
        <source>wood glue, dry</source>
        <translation>Holzleim, trocken</translation>
    </message>
    <message>
        <source>wood screw 3 x 12 mm</source>
        <translation>Holzschraube 3 x 12 mm</translation>
    </message>
    <message>
        <source>wood screw 3.5 x 16 mm</source>
        <translation>Holzschraube 3,5 x 16 mm</translation>
    </message>
    <message>
        <source>wood screw 4 x 20 mm</source>
        <translation>Holzschraube 4 x 20 mm</translation>
    </message>
    <message>
        <source>wood touches wood along a line only, near ({what}) mm: there the surface has no inside and outside</source>
        <translation>Holz berührt Holz nur auf einer Linie, bei ({what}) mm: dort hat die Oberfläche kein Innen und Außen</translation>
    </message>
    <message>
        <source>work out a part of it first</source>
        <translation>rechne erst einen Teil davon aus</translation>
    </message>
    <message>
        <source>write a unit after each, or +, -, * or / between them</source>
        <translation>schreib hinter jede eine Einheit, oder +, -, * oder / dazwischen</translation>
    </message>
    <message>
        <source>write a unit after each, the greater first, or an operator between them</source>
        <translation>schreib hinter jede eine Einheit, die größere zuerst, oder ein Rechenzeichen dazwischen</translation>
    </message>
    <message>
        <source>write it as HH:MM, 00:00 to 23:59</source>
        <translation>schreib sie als HH:MM, 00:00 bis 23:59</translation>
    </message>
    <message>
        <source>write it as YYYY-MM-DD</source>
        <translation>schreib es als JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>write its readings in the order of time</source>
        <translation>schreib seine Ablesungen in der Reihenfolge der Zeit</translation>
    </message>
    <message>
        <source>write the number before it</source>
        <translation>schreib die Zahl davor</translation>
    </message>
    <message>
        <source>write the unit after each number</source>
        <translation>schreib die Einheit hinter jede Zahl</translation>
    </message>
    <message>
        <source>x is measured forward from the tail; give a larger front_x_mm or a smaller rear_x_mm</source>
        <translation>x wird vom Heck nach vorn gemessen; gib ein größeres front_x_mm oder ein kleineres rear_x_mm an</translation>
    </message>
    <message>
        <source>yellow birch</source>
        <translation>Gelb-Birke</translation>
    </message>
    <message>
        <source>yellow brass</source>
        <translation>Messing</translation>
    </message>
    <message>
        <source>yellow-poplar</source>
        <translation>Tulpenbaum</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>zinc</source>
        <translation>Zink</translation>
    </message>
    <message>
        <source>zinc casting alloy</source>
        <translation>Zinkdruckguss</translation>
    </message>
    <message>
        <source>{amount} left</source>
        <translation>{amount} übrig</translation>
    </message>
    <message>
        <source>{amount} short</source>
        <translation>{amount} zu wenig</translation>
    </message>
    <message>
        <source>{amount} too much</source>
        <translation>{amount} zu viel</translation>
    </message>
    <message>
        <source>{corner} wheel</source>
        <translation>Rad {corner}</translation>
    </message>
    <message>
        <source>{difference}, within what the scale can tell</source>
        <translation>{difference}, im Rahmen dessen, was die Waage unterscheiden kann</translation>
    </message>
    <message>
        <source>{energy} has become speed by the finish.</source>
        <translation>{energy} sind bis zum Ziel zu Geschwindigkeit geworden.</translation>
    </message>
    <message>
        <source>{energy} is in the nose&apos;s turning up or down at the finish.</source>
        <translation>{energy} stecken im Ziel im Nicken der Nase nach oben oder unten.</translation>
    </message>
    <message>
        <source>{energy} went into making the wheels spin.</source>
        <translation>{energy} stecken in der Drehung der Räder.</translation>
    </message>
    <message>
        <source>{holding} for {piece}</source>
        <translation>{holding} für {piece}</translation>
    </message>
    <message>
        <source>{low} and {high}</source>
        <translation>{low} und {high}</translation>
    </message>
    <message>
        <source>{margin} may still be added: from {bound} on the scale would show more than the {limit} allowed.</source>
        <translation>{margin} dürfen noch dazu: ab {bound} würde die Waage mehr zeigen als die erlaubten {limit}.</translation>
    </message>
    <message>
        <source>{mass}, {length} of a {diameter} pellet of {putty}</source>
        <translation>{mass}, {length} eines {diameter} dicken Würstchens aus {putty}</translation>
    </message>
    <message>
        <source>{n} cuts</source>
        <translation>{n} Ausschnitte</translation>
    </message>
    <message>
        <source>{n} in number</source>
        <translation>{n} an der Zahl</translation>
    </message>
    <message>
        <source>{n} pieces</source>
        <translation>{n} Stücke</translation>
    </message>
    <message>
        <source>{n} points</source>
        <translation>{n} Punkte</translation>
    </message>
    <message>
        <source>{overlap_mm3} of this weight is in a wheel&apos;s way: move it, or it stops the wheel.</source>
        <translation>{overlap_mm3} dieses Gewichts sind einem Rad im Weg: verschieb es, sonst hält es das Rad an.</translation>
    </message>
    <message>
        <source>{overlap_mm3} of this weight is where wood is: cut the room for it, or move it into its cut.</source>
        <translation>{overlap_mm3} dieses Gewichts liegen, wo Holz ist: schneid den Platz dafür aus, oder verschieb es in seinen Ausschnitt.</translation>
    </message>
    <message>
        <source>{pieces} and {cuts}</source>
        <translation>{pieces} und {cuts}</translation>
    </message>
    <message>
        <source>{scale}, {amount} too little</source>
        <translation>{scale}, {amount} zu wenig</translation>
    </message>
    <message>
        <source>{scale}, {amount} too much</source>
        <translation>{scale}, {amount} zu viel</translation>
    </message>
    <message>
        <source>{trim} Weigh the front too, to know where.</source>
        <translation>{trim} Wieg auch vorn, damit klar ist, wo.</translation>
    </message>
    <message>
        <source>{trim}, {place}</source>
        <translation>{trim}, {place}</translation>
    </message>
    <message>
        <source>{trim}: an adult drills a hollow for it, or it sits outside where the rules allow that.</source>
        <translation>{trim}: ein Erwachsener bohrt eine Mulde dafür, oder es sitzt außen, wo die Regeln das erlauben.</translation>
    </message>
    <message>
        <source>{trim}: no more fits there</source>
        <translation>{trim}: mehr passt dort nicht hinein</translation>
    </message>
    <message>
        <source>{trim}: no more putty comes off</source>
        <translation>{trim}: mehr Knete lässt sich nicht abnehmen</translation>
    </message>
    <message>
        <source>{trim}: that is all there is of {name}</source>
        <translation>{trim}: mehr gibt es von {name} nicht</translation>
    </message>
    <message>
        <source>{trim}: there is room for {room}</source>
        <translation>{trim}: dort ist Platz für {room}</translation>
    </message>
    <message>
        <source>{what} is not a whole number</source>
        <translation>{what} ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>{what} is not known here</source>
        <translation>{what} ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>{what} is out of range</source>
        <translation>{what} liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>{what} measured points</source>
        <translation>{what} gemessene Punkte</translation>
    </message>
    <message>
        <source>{what} stands where {other} is needed</source>
        <translation>{what} steht, wo {other} gebraucht wird</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; as planned</source>
        <translation>{what} {found}, geplant {planned}; wie geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} further back than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} weiter hinten als geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} further forward than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} weiter vorn als geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} higher than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} höher als geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} less than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} weniger als geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} lower than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} tiefer als geplant</translation>
    </message>
    <message>
        <source>{what} {found}, planned {planned}; {amount} more than planned</source>
        <translation>{what} {found}, geplant {planned}; {amount} mehr als geplant</translation>
    </message>
    <message>
        <source>{what}, {amount} forward</source>
        <translation>{what}, {amount} nach vorn</translation>
    </message>
    <message>
        <source>{what}, {amount} more</source>
        <translation>{what}, {amount} mehr</translation>
    </message>
    <message>
        <source>{what}: it is a device or a pipe, not an ordinary file</source>
        <translation>{what}: es ist ein Gerät oder eine Pipe, keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>½ × (spin inertia / radius², rear and front) × wheel speed²</source>
        <translation>½ × (Drehträgheit / Radius², hinten und vorn) × Radgeschwindigkeit²</translation>
    </message>
    <message>
        <source>½ × mass × speed²</source>
        <translation>½ × Masse × Geschwindigkeit²</translation>
    </message>
    <message>
        <source>½ × pitch inertia × pitch rate²</source>
        <translation>½ × Nickträgheit × Nickgeschwindigkeit²</translation>
    </message>
    <message>
        <source>√(2 × (mass × gravity × drop to where it is fastest − spin − pitch − what was rubbed and blown away by then) / mass)</source>
        <translation>√(2 × (Masse × Erdbeschleunigung × Fall bis zur schnellsten Stelle − Drehung − Nicken − was bis dahin verrieben und verweht ist) / Masse)</translation>
    </message>
    <message>
        <source>√(2 × (released − spin − pitch − axles − hubs − rolling − rail − scrub − air) / mass)</source>
        <translation>√(2 × (freigesetzt − Drehung − Nicken − Achsen − Naben − Rollen − Schiene − Schräglauf − Luft) / Masse)</translation>
    </message>
    <message>
        <source>Turn the axle {angle} clockwise, seen from its head, towards the rail. Then roll again.</source>
        <translation>Dreh die Achse um {angle} im Uhrzeigersinn, vom Kopf aus gesehen, zur Schiene hin. Dann roll noch einmal.</translation>
    </message>
    <message>
        <source>Turn the axle {angle} clockwise, seen from its head, away from the rail. Then roll again.</source>
        <translation>Dreh die Achse um {angle} im Uhrzeigersinn, vom Kopf aus gesehen, von der Schiene weg. Dann roll noch einmal.</translation>
    </message>
    <message>
        <source>Turn the axle {angle} anticlockwise, seen from its head, towards the rail. Then roll again.</source>
        <translation>Dreh die Achse um {angle} gegen den Uhrzeigersinn, vom Kopf aus gesehen, zur Schiene hin. Dann roll noch einmal.</translation>
    </message>
    <message>
        <source>Turn the axle {angle} anticlockwise, seen from its head, away from the rail. Then roll again.</source>
        <translation>Dreh die Achse um {angle} gegen den Uhrzeigersinn, vom Kopf aus gesehen, von der Schiene weg. Dann roll noch einmal.</translation>
    </message>
    <message>
        <source>Roll the car and note how far it drifts.</source>
        <translation>Lass den Wagen rollen und schreib auf, wie weit er abdriftet.</translation>
    </message>
    <message>
        <source>Leave the axle, and roll again to be sure.</source>
        <translation>Lass die Achse, und roll zur Sicherheit noch einmal.</translation>
    </message>
    <message>
        <source>Bend the axle a little more: no turn of it reaches the target.</source>
        <translation>Bieg die Achse etwas mehr: keine Drehung erreicht das Ziel.</translation>
    </message>
    <message>
        <source>Done: leave the axle as it is.</source>
        <translation>Fertig: lass die Achse, wie sie ist.</translation>
    </message>
    <message>
        <source>(force leaning on the rail + how often it changes sides × mean force changing) × distance; the mean is summed up along the heat; a reduced model</source>
        <translation>(Kraft beim Anliegen an der Schiene + wie oft es die Seite wechselt × mittlere Kraft beim Wechseln) × Weg; das Mittel ist entlang des Laufs summiert; ein vereinfachtes Modell</translation>
    </message>
    <message>
        <source>Φ((margin − 1.3) / √(width of the passage² + (margin / steer)² × (what the holes leave² + what the track takes up²)))</source>
        <translation>Φ((Reserve − 1,3) / √(Breite des Übergangs² + (Reserve / Spur)² × (was die Löcher lassen² + was die Bahn aufbraucht²)))</translation>
    </message>
    <message>
        <source>a drill bit has a diameter above zero</source>
        <translation>ein Bohrer hat einen Durchmesser über null</translation>
    </message>
    <message>
        <source>type another</source>
        <translation>gib einen anderen Wert ein</translation>
    </message>
    <message>
        <source>a cut needs a name</source>
        <translation>ein Ausschnitt braucht einen Namen</translation>
    </message>
    <message>
        <source>give it one: its weights go by it</source>
        <translation>gib ihm einen: seine Gewichte richten sich danach</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not two numbers</source>
        <translation>„{text}“ sind nicht zwei Zahlen</translation>
    </message>
    <message>
        <source>give X and Z in each line, parted by a space or a tab</source>
        <translation>schreib in jede Zeile X und Z, durch Leerzeichen oder Tabulator getrennt</translation>
    </message>
    <message>
        <source>no typeface is installed, and the sheet has words on it</source>
        <translation>es ist keine Schrift installiert, und auf dem Blatt stehen Wörter</translation>
    </message>
    <message>
        <source>install one, for instance the package fonts-dejavu-core</source>
        <translation>installier eine, zum Beispiel das Paket fonts-dejavu-core</translation>
    </message>
    <message>
        <source>two places are farther apart than nothing</source>
        <translation>zwei Stellen liegen weiter auseinander als gar nicht</translation>
    </message>
    <message>
        <source>type the distance between them</source>
        <translation>gib den Abstand zwischen ihnen ein</translation>
    </message>
    <message>
        <source>an outline is longer than nothing and shorter than a metre</source>
        <translation>ein Umriss ist länger als nichts und kürzer als ein Meter</translation>
    </message>
    <message>
        <source>type another length</source>
        <translation>gib eine andere Länge ein</translation>
    </message>
    <message>
        <source>a factor is above nothing</source>
        <translation>ein Faktor ist größer als null</translation>
    </message>
    <message>
        <source>this is no SVG drawing</source>
        <translation>das ist keine SVG-Zeichnung</translation>
    </message>
    <message>
        <source>save the drawing as plain SVG</source>
        <translation>speichere die Zeichnung als einfaches SVG</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>choose an SVG drawing</source>
        <translation>wähl eine SVG-Zeichnung</translation>
    </message>
    <message>
        <source>the file is damaged or no SVG: {why}</source>
        <translation>die Datei ist beschädigt oder kein SVG: {why}</translation>
    </message>
    <message>
        <source>save the drawing again as plain SVG</source>
        <translation>speichere die Zeichnung noch einmal als einfaches SVG</translation>
    </message>
    <message>
        <source>{name} is below nothing</source>
        <translation>{name} ist kleiner als null</translation>
    </message>
    <message>
        <source>save the drawing again</source>
        <translation>speichere die Zeichnung noch einmal</translation>
    </message>
    <message>
        <source>the viewBox has no size</source>
        <translation>die viewBox hat keine Größe</translation>
    </message>
    <message>
        <source>{name} is not above nothing</source>
        <translation>{name} ist nicht größer als null</translation>
    </message>
    <message>
        <source>the drawing is nested too deeply</source>
        <translation>die Zeichnung ist zu tief verschachtelt</translation>
    </message>
    <message>
        <source>save it as plain SVG</source>
        <translation>speichere sie als einfaches SVG</translation>
    </message>
    <message>
        <source>the points have a coordinate too many</source>
        <translation>die Punkte haben eine Koordinate zu viel</translation>
    </message>
    <message>
        <source>the drawing has too many lines</source>
        <translation>die Zeichnung hat zu viele Linien</translation>
    </message>
    <message>
        <source>save the outline alone</source>
        <translation>speichere den Umriss allein</translation>
    </message>
    <message>
        <source>a transform is beyond all size</source>
        <translation>eine Transformation übersteigt jede Größe</translation>
    </message>
    <message>
        <source>no line of the drawing is closed</source>
        <translation>keine Linie der Zeichnung ist geschlossen</translation>
    </message>
    <message>
        <source>the drawing holds no line but copies of others (&quot;use&quot;)</source>
        <translation>die Zeichnung enthält nur Kopien anderer Linien („use“)</translation>
    </message>
    <message>
        <source>the drawing holds no line</source>
        <translation>die Zeichnung enthält keine Linie</translation>
    </message>
    <message>
        <source>join the outline&apos;s ends into one closed path in the drawing program</source>
        <translation>verbinde im Zeichenprogramm die Enden des Umrisses zu einem geschlossenen Pfad</translation>
    </message>
    <message>
        <source>turn the copies into paths of their own in the drawing program</source>
        <translation>mach im Zeichenprogramm aus den Kopien eigene Pfade</translation>
    </message>
    <message>
        <source>turn texts and pictures into paths in the drawing program, or lay a picture under the drawing and trace it</source>
        <translation>mach im Zeichenprogramm aus Texten und Bildern Pfade, oder leg ein Bild unter die Zeichnung und zeichne es nach</translation>
    </message>
    <message>
        <source>the file is larger than 32 MiB</source>
        <translation>die Datei ist größer als 32 MiB</translation>
    </message>
    <message>
        <source>save the outline alone, as plain SVG</source>
        <translation>speichere den Umriss allein, als einfaches SVG</translation>
    </message>
    <message>
        <source>the file cannot be opened: {why}</source>
        <translation>die Datei lässt sich nicht öffnen: {why}</translation>
    </message>
    <message>
        <source>check its name and that you may read it</source>
        <translation>prüf ihren Namen und ob du sie lesen darfst</translation>
    </message>
    <message>
        <source>a transform that is none, or has another count of numbers</source>
        <translation>eine Transformation, die keine ist oder eine andere Anzahl Zahlen hat</translation>
    </message>
    <message>
        <source>a length is no number with a unit that is known</source>
        <translation>eine Länge ist keine Zahl mit einer bekannten Einheit</translation>
    </message>
    <message>
        <source>a transform without its brackets</source>
        <translation>eine Transformation ohne ihre Klammern</translation>
    </message>
    <message>
        <source>{piece} stays where it is</source>
        <translation>{piece} bleibt, wo es ist</translation>
    </message>
    <message>
        <source>{trim}: it is glued or locked.</source>
        <translation>{trim}: verklebt oder gesperrt.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further, its cut ends there.</source>
        <translation>{trim}: Weiter geht es nicht, dort endet der Ausschnitt.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further, wood is in the way.</source>
        <translation>{trim}: Weiter geht es nicht, Holz ist im Weg.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further without standing out of the body.</source>
        <translation>{trim}: Weiter geht es nicht, ohne dass es aus dem Rumpf ragt.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further, {other} is in the way.</source>
        <translation>{trim}: Weiter geht es nicht, im Weg ist: {other}.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further, an axle is in the way.</source>
        <translation>{trim}: Weiter geht es nicht, eine Achse ist im Weg.</translation>
    </message>
    <message>
        <source>{trim}: it can go no further, a wheel is in the way.</source>
        <translation>{trim}: Weiter geht es nicht, ein Rad ist im Weg.</translation>
    </message>
    <message>
        <source>{trim}: it is bedded in {other}. It moves once that is taken out.</source>
        <translation>{trim}: Es ist eingebettet in {other}. Es bewegt sich erst, wenn das herausgenommen ist.</translation>
    </message>
    <message>
        <source>{trim}, before the putty goes in</source>
        <translation>{trim}, bevor die Knete hineinkommt</translation>
    </message>
    <message>
        <source>the file has no car</source>
        <translation>in der Datei ist kein Wagen</translation>
    </message>
    <message>
        <source>a transform has an origin of its own</source>
        <translation>eine Transformation hat einen eigenen Ursprung</translation>
    </message>
    <message>
        <source>a transform by a share of the element&apos;s own size</source>
        <translation>eine Transformation um einen Anteil der eigenen Größe</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>A worse scale</source>
        <translation>Eine schlechtere Waage</translation>
    </message>
    <message>
        <source>Above the lane, where it was measured.</source>
        <translation>Über der Bahn, wo er gemessen wurde.</translation>
    </message>
    <message>
        <source>Ahead of the rear axle, on a knife edge.</source>
        <translation>Vor der Hinterachse, auf einer Schneide.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Along the surface, from the beginning of the first piece.</source>
        <translation>Entlang der Bahn, vom Anfang des ersten Stücks.</translation>
    </message>
    <message>
        <source>As a share of the dry wood&apos;s mass: about 8 % in a heated room, 12 % in the yard, more in a damp shed. It counts where the table&apos;s density does.</source>
        <translation>Als Anteil der Masse des trockenen Holzes: etwa 8 % im geheizten Zimmer, 12 % beim Händler, mehr in einem feuchten Schuppen. Es zählt, wo die Dichte der Tabelle zählt.</translation>
    </message>
    <message>
        <source>At the hall itself, not reduced to sea level.</source>
        <translation>In der Halle selbst, nicht auf Meereshöhe umgerechnet.</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>Balances at</source>
        <translation>Balanciert bei</translation>
    </message>
    <message>
        <source>Block weighs</source>
        <translation>Klotz wiegt</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Cant</source>
        <translation>Sturz</translation>
    </message>
    <message>
        <source>Car weighs</source>
        <translation>Wagen wiegt</translation>
    </message>
    <message>
        <source>Centre of mass at</source>
        <translation>Schwerpunkt bei</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Diameter of the axle where the wheel turns.</source>
        <translation>Durchmesser der Achse, wo das Rad sich dreht.</translation>
    </message>
    <message>
        <source>Diameter of the axle&apos;s head.</source>
        <translation>Durchmesser des Achskopfs.</translation>
    </message>
    <message>
        <source>Diameter of the roll of putty that pellets are cut from.</source>
        <translation>Durchmesser des Würstchens Knete, von dem Stücke abgeschnitten werden.</translation>
    </message>
    <message>
        <source>Division</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Abdrift</translation>
    </message>
    <message>
        <source>Drift board</source>
        <translation>Rollbrett</translation>
    </message>
    <message>
        <source>Edges rounded by</source>
        <translation>Kanten gerundet um</translation>
    </message>
    <message>
        <source>Finish line</source>
        <translation>Ziellinie</translation>
    </message>
    <message>
        <source>From inner to outer face.</source>
        <translation>Von der Innen- zur Außenfläche.</translation>
    </message>
    <message>
        <source>From the bottom of the wood to the middle of the front axle.</source>
        <translation>Von der Unterseite des Holzes bis zur Mitte der Vorderachse.</translation>
    </message>
    <message>
        <source>From the bottom of the wood to the middle of the rear axle.</source>
        <translation>Von der Unterseite des Holzes bis zur Mitte der Hinterachse.</translation>
    </message>
    <message>
        <source>From the tail to the front axle.</source>
        <translation>Vom Heck bis zur Vorderachse.</translation>
    </message>
    <message>
        <source>From the tail to the rear axle.</source>
        <translation>Vom Heck bis zur Hinterachse.</translation>
    </message>
    <message>
        <source>Front axle at</source>
        <translation>Vorderachse bei</translation>
    </message>
    <message>
        <source>Front height</source>
        <translation>Höhe vorn</translation>
    </message>
    <message>
        <source>Front left</source>
        <translation>Vorn links</translation>
    </message>
    <message>
        <source>Front left wheel</source>
        <translation>Rad vorn links</translation>
    </message>
    <message>
        <source>Front load</source>
        <translation>Vorderachslast</translation>
    </message>
    <message>
        <source>Front right</source>
        <translation>Vorn rechts</translation>
    </message>
    <message>
        <source>Front right wheel</source>
        <translation>Rad vorn rechts</translation>
    </message>
    <message>
        <source>Gap to the wood</source>
        <translation>Spalt zum Holz</translation>
    </message>
    <message>
        <source>Gap under a wheel that does not touch.</source>
        <translation>Spalt unter einem Rad, das nicht aufsetzt.</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>How far it rolled, straight along the board.</source>
        <translation>Wie weit er rollte, gerade entlang des Bretts.</translation>
    </message>
    <message>
        <source>How far the car wandered sideways on the drift board.</source>
        <translation>Wie weit der Wagen auf dem Rollbrett seitwärts abkam.</translation>
    </message>
    <message>
        <source>How far the mark you watched is ahead of the rear axle.</source>
        <translation>Wie weit die beobachtete Marke vor der Hinterachse liegt.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>In the hall.</source>
        <translation>In der Halle.</translation>
    </message>
    <message>
        <source>Its division</source>
        <translation>Ihr Schritt</translation>
    </message>
    <message>
        <source>Left empty: one division more than the race scale.</source>
        <translation>Bleibt es leer: ein Schritt mehr als die Waage des Rennens.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Of a scale the car may meet on the night; left empty, the race scale&apos;s own.</source>
        <translation>Einer Waage, auf die der Wagen am Abend treffen kann; bleibt es leer, der Schritt der Waage des Rennens.</translation>
    </message>
    <message>
        <source>Of one axle, under its head.</source>
        <translation>Einer Achse, unter ihrem Kopf.</translation>
    </message>
    <message>
        <source>Of the uncut block.</source>
        <translation>Des unzerschnittenen Klotzes.</translation>
    </message>
    <message>
        <source>Of the wood, where the block was not weighed.</source>
        <translation>Des Holzes, wo der Klotz nicht gewogen wurde.</translation>
    </message>
    <message>
        <source>One axle weighs</source>
        <translation>Eine Achse wiegt</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>Paint and decals</source>
        <translation>Farbe und Bilder</translation>
    </message>
    <message>
        <source>Pellet across</source>
        <translation>Würstchen dick</translation>
    </message>
    <message>
        <source>Play between hub and body.</source>
        <translation>Spiel zwischen Nabe und Körper.</translation>
    </message>
    <message>
        <source>Positive where the axle&apos;s outer end is higher.</source>
        <translation>Positiv, wo das äußere Ende der Achse höher ist.</translation>
    </message>
    <message>
        <source>Positive where the wheel steers to the car&apos;s left.</source>
        <translation>Positiv, wo das Rad vom Wagen aus nach links lenkt.</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Putty for the last tenths</source>
        <translation>Knete für die letzten Zehntel</translation>
    </message>
    <message>
        <source>Race scale</source>
        <translation>Waage des Rennens</translation>
    </message>
    <message>
        <source>Raised by</source>
        <translation>Angehoben um</translation>
    </message>
    <message>
        <source>Rear axle at</source>
        <translation>Hinterachse bei</translation>
    </message>
    <message>
        <source>Rear height</source>
        <translation>Höhe hinten</translation>
    </message>
    <message>
        <source>Rear left</source>
        <translation>Hinten links</translation>
    </message>
    <message>
        <source>Rear left wheel</source>
        <translation>Rad hinten links</translation>
    </message>
    <message>
        <source>Rear right</source>
        <translation>Hinten rechts</translation>
    </message>
    <message>
        <source>Rear right wheel</source>
        <translation>Rad hinten rechts</translation>
    </message>
    <message>
        <source>Relative humidity of the air.</source>
        <translation>Relative Feuchte der Luft.</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>Shows too much by</source>
        <translation>Zeigt zu viel um</translation>
    </message>
    <message>
        <source>Spin inertia</source>
        <translation>Drehträgheit</translation>
    </message>
    <message>
        <source>Start line</source>
        <translation>Startlinie</translation>
    </message>
    <message>
        <source>Steer of each wheel</source>
        <translation>Spur jedes Rads</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>The finished car on your scale. It wins over what is computed.</source>
        <translation>Der fertige Wagen auf deiner Waage. Das gilt vor dem Berechneten.</translation>
    </message>
    <message>
        <source>The hole the axle goes through.</source>
        <translation>Das Loch, durch das die Achse geht.</translation>
    </message>
    <message>
        <source>The radius that sanding leaves along the edges.</source>
        <translation>Der Radius, den das Schleifen an den Kanten lässt.</translation>
    </message>
    <message>
        <source>The smallest step the race&apos;s scale shows.</source>
        <translation>Der kleinste Schritt, den die Waage des Rennens zeigt.</translation>
    </message>
    <message>
        <source>The uncut block on your own scale. It wins over the density.</source>
        <translation>Der unzerschnittene Klotz auf deiner eigenen Waage. Das gilt vor der Dichte.</translation>
    </message>
    <message>
        <source>The wheel alone, without its axle.</source>
        <translation>Das Rad allein, ohne seine Achse.</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Typed back from the sheet</source>
        <translation>Vom Plan zurückgetippt</translation>
    </message>
    <message>
        <source>Watched mark</source>
        <translation>Beobachtete Marke</translation>
    </message>
    <message>
        <source>Water in it</source>
        <translation>Wasser darin</translation>
    </message>
    <message>
        <source>Weigh all four and divide.</source>
        <translation>Wieg alle vier und teil.</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Wiegt</translation>
    </message>
    <message>
        <source>What it rolls on.</source>
        <translation>Worauf es rollt.</translation>
    </message>
    <message>
        <source>What the scale shows under the front wheels, the rear at the same height.</source>
        <translation>Was die Waage unter den Vorderrädern zeigt, hinten auf gleicher Höhe.</translation>
    </message>
    <message>
        <source>What the scale shows with nothing on it; negative where it shows too little.</source>
        <translation>Was die Waage zeigt, wenn nichts darauf ist; negativ, wo sie zu wenig zeigt.</translation>
    </message>
    <message>
        <source>What they weigh, spread over the surface.</source>
        <translation>Was sie wiegen, über die Oberfläche verteilt.</translation>
    </message>
    <message>
        <source>Where it was measured.</source>
        <translation>Wo er gemessen wurde.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
</context>
<context>
    <name>Verdicts</name>
    <message>
        <source>Local rules and the inspector decide; this list only helps to come prepared.</source>
        <translation>Die örtlichen Regeln und der Prüfer entscheiden; diese Liste hilft nur, gut vorbereitet zu kommen.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::AgreeSlip</name>
    <message>
        <source>%1 %2.</source>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1 (this project&apos;s own)</source>
        <translation>%1 (eigene dieses Projekts)</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, geändert</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Rules of the race</source>
        <translation>&amp;Regeln des Rennens</translation>
    </message>
    <message>
        <source>A rule that only a person can look at. It stands on the inspection list.</source>
        <translation>Eine Regel, die nur ein Mensch prüfen kann. Sie steht auf der Abnahmeliste.</translation>
    </message>
    <message>
        <source>Add a Rule &amp;of the House</source>
        <translation>&amp;Hausregel hinzufügen</translation>
    </message>
    <message>
        <source>Add a rule of the house</source>
        <translation>Hausregel hinzufügen</translation>
    </message>
    <message>
        <source>Look at it yourself: %1 %2 (%3)</source>
        <translation>Sieh selbst nach: %1 %2 (%3)</translation>
    </message>
    <message>
        <source>New rule</source>
        <translation>Neue Regel</translation>
    </message>
    <message>
        <source>No rule is set.</source>
        <translation>Keine Regel ist gesetzt.</translation>
    </message>
    <message>
        <source>On the lane</source>
        <translation>Auf der Bahn</translation>
    </message>
    <message>
        <source>Race scale</source>
        <translation>Waage des Rennens</translation>
    </message>
    <message>
        <source>Rules of the house</source>
        <translation>Hausregeln</translation>
    </message>
    <message>
        <source>Rules of the race</source>
        <translation>Regeln des Rennens</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Start, date, lubricant</source>
        <translation>Start, Datum, Schmiermittel</translation>
    </message>
    <message>
        <source>Starts from a ready set of limits; each can then be changed below. Your race&apos;s own rules decide.</source>
        <translation>Beginnt mit einem fertigen Satz von Grenzen; jede lässt sich danach unten ändern. Die Regeln deines Rennens entscheiden.</translation>
    </message>
    <message>
        <source>The car cannot be computed, so no rule is decided.</source>
        <translation>Der Wagen lässt sich nicht berechnen, also ist keine Regel entschieden.</translation>
    </message>
    <message>
        <source>This project&apos;s own</source>
        <translation>Eigene dieses Projekts</translation>
    </message>
    <message>
        <source>What may be done</source>
        <translation>Was gemacht werden darf</translation>
    </message>
    <message>
        <source>Wheels</source>
        <translation>Räder</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::AnswersPanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Balance point</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Front load</source>
        <translation>Vorderachslast</translation>
    </message>
    <message>
        <source>Heat time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Heat time: %1</source>
        <translation>Laufzeit: %1</translation>
    </message>
    <message>
        <source>How long the car takes from the start line to the finish line, and how sure that is: two times in three it will be within the second number of the first.</source>
        <translation>Wie lange der Wagen von der Startlinie zur Ziellinie braucht, und wie sicher das ist: in zwei von drei Fällen liegt es innerhalb der zweiten Zahl um die erste.</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Nothing to put right.</source>
        <translation>Nichts in Ordnung zu bringen.</translation>
    </message>
    <message>
        <source>The change since you took hold, or since the last step. Less is faster.</source>
        <translation>Die Änderung, seit du zugegriffen hast, oder seit dem letzten Schritt. Weniger ist schneller.</translation>
    </message>
    <message>
        <source>To the limit</source>
        <translation>Bis zur Grenze</translation>
    </message>
    <message>
        <source>What a scale under the front wheels shows on a level table. Too little, and the front no longer keeps the car straight.</source>
        <translation>Was eine Waage unter den Vorderrädern auf einem ebenen Tisch zeigt. Ist es zu wenig, hält der Bug den Wagen nicht mehr gerade.</translation>
    </message>
    <message>
        <source>What may still be added before the race&apos;s scale shows more than the rules allow.</source>
        <translation>Was noch dazukommen darf, bevor die Waage des Rennens mehr zeigt, als die Regeln erlauben.</translation>
    </message>
    <message>
        <source>What the whole car weighs, wheels and axles included.</source>
        <translation>Was der ganze Wagen wiegt, Räder und Achsen inbegriffen.</translation>
    </message>
    <message>
        <source>Where the car would balance on a knife edge, ahead of the rear axle. Further back is faster, until the front gets too light.</source>
        <translation>Wo der Wagen auf einer Schneide balancieren würde, vor der Hinterachse. Weiter hinten ist schneller, bis es vorn zu leicht wird.</translation>
    </message>
    <message>
        <source>no limit set</source>
        <translation>keine Grenze gesetzt</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::AxleBenchView</name>
    <message>
        <source>%1, alike and straight</source>
        <translation>%1, gleich und gerade</translation>
    </message>
    <message>
        <source>%1, alike, bow not measured</source>
        <translation>%1, gleich, Krümmung nicht gemessen</translation>
    </message>
    <message>
        <source>%1, bowed</source>
        <translation>%1, krumm</translation>
    </message>
    <message numerus="yes">
        <source>%n axle(s) taken.</source>
        <translation>
            <numerusform>%n Achse übernommen.</numerusform>
            <numerusform>%n Achsen übernommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>A&amp;dd an Axle</source>
        <translation>Achse &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Axle</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>Bow</source>
        <translation>Krümmung</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Group 1 has four or more that are alike: enough for a car.</source>
        <translation>Gruppe 1 hat vier oder mehr gleiche: genug für einen Wagen.</translation>
    </message>
    <message>
        <source>Measured axles, grouped</source>
        <translation>Gemessene Achsen, in Gruppen</translation>
    </message>
    <message>
        <source>No group has four straight axles that are alike.</source>
        <translation>Keine Gruppe hat vier gerade, gleiche Achsen.</translation>
    </message>
    <message>
        <source>Open a Table of Axles</source>
        <translation>Tabelle der Achsen öffnen</translation>
    </message>
    <message>
        <source>Rem&amp;ove the Axle</source>
        <translation>Achse &amp;entfernen</translation>
    </message>
    <message>
        <source>Takes axles from a table on the clipboard. Its first line names the columns: name, finish, diameter, bow.</source>
        <translation>Nimmt Achsen aus einer Tabelle der Zwischenablage. Die erste Zeile nennt die Spalten: name, finish, diameter, bow.</translation>
    </message>
    <message>
        <source>Type into a cell. The bow is what a gauge shows from least to most while the axle turns between two rests: zero where it is straight. Axles of one group can stand for each other.</source>
        <translation>Tipp in eine Zelle. Die Krümmung ist, was eine Messuhr vom kleinsten bis zum größten Wert zeigt, während sich die Achse zwischen zwei Auflagen dreht: null, wo sie gerade ist. Achsen einer Gruppe können einander ersetzen.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::AxleHeadPicture</name>
    <message>
        <source>axle seen from its head</source>
        <translation>Achse vom Kopf aus gesehen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::BellPlot</name>
    <message>
        <source>%1: around %2, 19 heats of 20 between %3 and %4</source>
        <translation>%1: etwa %2, 19 von 20 Läufen zwischen %3 und %4</translation>
    </message>
    <message>
        <source>Heat times, not drawn yet</source>
        <translation>Laufzeiten, noch nicht gezogen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::BenchTable</name>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>Line %1, %2: “%3” is left out: %4.</source>
        <translation>Zeile %1, %2: „%3“ ist weggelassen: %4.</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The column “%1” means nothing here.</source>
        <translation>Die Spalte „%1“ bedeutet hier nichts.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::BenchTableView</name>
    <message>
        <source>P&amp;aste a Table</source>
        <translation>T&amp;abelle einfügen</translation>
    </message>
    <message>
        <source>Fro&amp;m a File…</source>
        <translation>Aus &amp;Datei…</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::BenchWheelBox</name>
    <message>
        <source>Readings are kept in the project for each wheel of the bench&apos;s table, and for one that is not in it. Choose a wheel to look at its readings again.</source>
        <translation>Ablesungen bleiben im Projekt, für jedes Rad der Tabelle der Radmessplatz und für eines, das nicht darin steht. Wähl ein Rad, um seine Ablesungen wieder anzusehen.</translation>
    </message>
    <message>
        <source>Wheel measured</source>
        <translation>Gemessenes Rad</translation>
    </message>
    <message>
        <source>one not in the table</source>
        <translation>eines, das nicht in der Tabelle steht</translation>
    </message>
    <message>
        <source>wheel %1</source>
        <translation>Rad %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::BoardPicture</name>
    <message numerus="yes">
        <source>Drift board from above, %n roll(s)</source>
        <translation>
            <numerusform>Rollbrett von oben, %n Rollversuch</numerusform>
            <numerusform>Rollbrett von oben, %n Rollversuche</numerusform>
        </translation>
    </message>
    <message>
        <source>From above, the car rolls to the right. × a roll, — the target. Sideways drawn %1 times as large.</source>
        <translation>Von oben, der Wagen rollt nach rechts. × ein Rollversuch, — das Ziel. Seitwärts %1-mal so groß gezeichnet.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CantPicture</name>
    <message>
        <source>From behind. Lean drawn three times as large.</source>
        <translation>Von hinten. Neigung dreimal so groß gezeichnet.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CantView</name>
    <message>
        <source>A canted wheel is driven to one end of its axle: with the outer end higher to the head, off the wood. Practice cants rear axles by about 3° and finds it faster. The model counts what the hub saves and what a tread on its edge costs; how much an edge costs is not known, so a timed trial of both settles it.</source>
        <translation>Ein Rad mit Sturz wird an ein Ende seiner Achse gedrückt: mit dem äußeren Ende höher zum Kopf hin, weg vom Holz. In der Praxis bekommen Hinterachsen etwa 3° Sturz, und man findet es schneller. Das Modell zählt, was die Nabe spart und was eine Lauffläche auf der Kante kostet; wie viel eine Kante kostet, ist nicht bekannt, also entscheidet ein Versuch mit der Uhr.</translation>
    </message>
    <message>
        <source>Cant</source>
        <translation>Sturz</translation>
    </message>
    <message>
        <source>Cant of the touching wheels</source>
        <translation>Sturz der aufsetzenden Räder</translation>
    </message>
    <message>
        <source>Drill at, or bend and turn</source>
        <translation>Bohren unter, oder biegen und drehen</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Front wheels from behind</source>
        <translation>Vorderräder von hinten</translation>
    </message>
    <message>
        <source>Gap to the rail</source>
        <translation>Spalt zur Schiene</translation>
    </message>
    <message>
        <source>Gap to the wood</source>
        <translation>Spalt zum Holz</translation>
    </message>
    <message>
        <source>Its hub runs on</source>
        <translation>Nabe läuft an</translation>
    </message>
    <message>
        <source>One line for each wheel that touches: where its lean drives it, what clears what, and how to drill or bend the axle for that lean.</source>
        <translation>Je Rad, das aufsetzt, eine Zeile: wohin seine Neigung es treibt, was woran frei vorbeigeht, und wie für diese Neigung die Achse zu bohren oder zu biegen ist.</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Rear wheels from behind</source>
        <translation>Hinterräder von hinten</translation>
    </message>
    <message>
        <source>Tread edge lifted by</source>
        <translation>Laufflächenkante gehoben um</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>drill at %1, or bend %2 turned %3</source>
        <translation>unter %1 bohren, oder um %2 biegen und um %3 drehen</translation>
    </message>
    <message>
        <source>either, by chance</source>
        <translation>eines von beiden, zufällig</translation>
    </message>
    <message>
        <source>rubs: %1</source>
        <translation>reibt: %1</translation>
    </message>
    <message>
        <source>the axle&apos;s head</source>
        <translation>der Achskopf</translation>
    </message>
    <message>
        <source>the wood</source>
        <translation>das Holz</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CarCanvas</name>
    <message>
        <source>%1: drag to move</source>
        <translation>%1: zum Verschieben ziehen</translation>
    </message>
    <message numerus="yes">
        <source>%n of them stay: locked, putty, or in drilled wood.</source>
        <translation>
            <numerusform>%n davon bleibt: fest, Knete oder in gebohrtem Holz.</numerusform>
            <numerusform>%n davon bleiben: fest, Knete oder in gebohrtem Holz.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Add a Point Here</source>
        <translation>Hier einen &amp;Punkt einfügen</translation>
    </message>
    <message>
        <source>All of it stays: it is locked, or in drilled wood.</source>
        <translation>Alles davon bleibt: es ist fest oder in gebohrtem Holz.</translation>
    </message>
    <message>
        <source>An outline keeps at least three points.</source>
        <translation>Ein Umriss behält mindestens drei Punkte.</translation>
    </message>
    <message>
        <source>Choose a point of the outline first, or double-click the line.</source>
        <translation>Wähl erst einen Punkt des Umrisses, oder klick doppelt auf die Linie.</translation>
    </message>
    <message>
        <source>Click the first of two places on the picture whose distance you know.  Esc: leave it.</source>
        <translation>Klick die erste von zwei Stellen auf dem Bild an, deren Abstand du kennst.  Esc: lassen.</translation>
    </message>
    <message>
        <source>Click where it should lie.  Enter: put it in the last cut.  Esc: back on the shelf.</source>
        <translation>Klick, wo es liegen soll.  Eingabe: in den letzten Ausschnitt legen.  Esc: zurück ins Regal.</translation>
    </message>
    <message>
        <source>Copied. Paste it into this car, another, or another file.</source>
        <translation>Kopiert. Füg es in diesen Wagen, einen anderen oder eine andere Datei ein.</translation>
    </message>
    <message>
        <source>Ctrl: off the grid.  Shift: straight along or up.  Esc: put it back.</source>
        <translation>Strg: ohne Raster.  Umschalt: gerade entlang oder hinauf.  Esc: zurücklegen.</translation>
    </message>
    <message>
        <source>Cut. Paste it into this car, another, or another file.</source>
        <translation>Ausgeschnitten. Füg es in diesen Wagen, einen anderen oder eine andere Datei ein.</translation>
    </message>
    <message>
        <source>Cuts are drawn in the step Shape.</source>
        <translation>Ausschnitte werden im Schritt Form gezeichnet.</translation>
    </message>
    <message>
        <source>Drag from where the drill goes in to where it stops, or click for a hole straight into this view.  Enter: put one in the middle.  Esc: leave it.</source>
        <translation>Zieh von dort, wo der Bohrer eintritt, bis dahin, wo er aufhört, oder klick für ein Loch gerade in diese Ansicht.  Eingabe: eines in die Mitte setzen.  Esc: lassen.</translation>
    </message>
    <message>
        <source>Drag the picture, or move it with the arrow keys.  Shift: straight along or up.  Esc: done.</source>
        <translation>Zieh das Bild, oder verschieb es mit den Pfeiltasten.  Umschalt: gerade entlang oder hinauf.  Esc: fertig.</translation>
    </message>
    <message>
        <source>Drag the pocket from corner to corner.  Enter: put one in the middle.  Esc: leave it.</source>
        <translation>Zieh die Tasche von Ecke zu Ecke.  Eingabe: eine in die Mitte setzen.  Esc: lassen.</translation>
    </message>
    <message>
        <source>Drawing of the car</source>
        <translation>Zeichnung des Wagens</translation>
    </message>
    <message>
        <source>Make It &amp;Smooth</source>
        <translation>&amp;Glatt machen</translation>
    </message>
    <message>
        <source>Make It a &amp;Corner</source>
        <translation>Zur &amp;Ecke machen</translation>
    </message>
    <message>
        <source>Move picture</source>
        <translation>Bild verschieben</translation>
    </message>
    <message>
        <source>No picture shows under the drawing.</source>
        <translation>Unter der Zeichnung ist kein Bild zu sehen.</translation>
    </message>
    <message>
        <source>No picture shows under this view.</source>
        <translation>Unter dieser Ansicht ist kein Bild zu sehen.</translation>
    </message>
    <message>
        <source>Nothing changes: it is so already.</source>
        <translation>Nichts ändert sich: es ist schon so.</translation>
    </message>
    <message>
        <source>Now click the second place.  The wheel zooms.  Esc: leave it.</source>
        <translation>Klick jetzt die zweite Stelle an.  Das Mausrad vergrößert.  Esc: lassen.</translation>
    </message>
    <message numerus="yes">
        <source>Pasted, with %n pocket(s) or bore(s) this car did not have.</source>
        <translation>
            <numerusform>Eingefügt, mit %n Tasche oder Bohrung, die dieser Wagen nicht hatte.</numerusform>
            <numerusform>Eingefügt, mit %n Taschen oder Bohrungen, die dieser Wagen nicht hatte.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pasted.</source>
        <translation>Eingefügt.</translation>
    </message>
    <message>
        <source>Point at the outline itself to add a point to it.</source>
        <translation>Zeig auf den Umriss selbst, um dort einen Punkt einzufügen.</translation>
    </message>
    <message>
        <source>Putty takes the shape of what it fills: let go of it over a pocket or a bore.</source>
        <translation>Knete nimmt die Form dessen an, was sie füllt: lass sie über einer Tasche oder Bohrung los.</translation>
    </message>
    <message>
        <source>That is the first place: click another, well away from it.</source>
        <translation>Das ist die erste Stelle: klick eine andere an, weit genug davon weg.</translation>
    </message>
    <message>
        <source>The car to scale: from the side, from above and from the front. What the step in hand is about can be dragged, chosen with Page Up and Page Down, and nudged with the arrow keys. Double-click the outline to add a point to it. The wheel zooms, the middle button moves the paper; on a touchpad two fingers do both.</source>
        <translation>Der Wagen im Maßstab: von der Seite, von oben und von vorn. Worum es im aktuellen Schritt geht, lässt sich ziehen, mit Bild auf und Bild ab wählen und mit den Pfeiltasten ein wenig verschieben. Klick doppelt auf den Umriss, um einen Punkt einzufügen. Das Mausrad vergrößert, die mittlere Taste verschiebt das Papier; auf einem Touchpad tun zwei Finger beides.</translation>
    </message>
    <message>
        <source>Zoom to &amp;Fit</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CarPicture</name>
    <message>
        <source>%1 degrees from above</source>
        <translation>%1 Grad von oben</translation>
    </message>
    <message>
        <source>%1 degrees from below</source>
        <translation>%1 Grad von unten</translation>
    </message>
    <message>
        <source>%1 degrees from its front towards its left</source>
        <translation>%1 Grad von vorn nach links</translation>
    </message>
    <message>
        <source>%1 degrees from its front towards its right</source>
        <translation>%1 Grad von vorn nach rechts</translation>
    </message>
    <message>
        <source>Drag to turn</source>
        <translation>Zum Drehen ziehen</translation>
    </message>
    <message>
        <source>Picture of the car</source>
        <translation>Bild des Wagens</translation>
    </message>
    <message>
        <source>Seen %1, %2. The arrow keys turn it.</source>
        <translation>Gesehen %1, %2. Die Pfeiltasten drehen ihn.</translation>
    </message>
    <message>
        <source>The whole car as it will be. Drag it to turn it, or use the arrow keys; Home brings the first look back. A double click or Enter shows it large.</source>
        <translation>Der ganze Wagen, wie er wird. Zieh, um ihn zu drehen, oder nimm die Pfeiltasten; Pos1 bringt den ersten Blick zurück. Doppelklick oder Eingabe zeigt ihn groß.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CurveView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Load under the wheels</source>
        <translation>Last unter den Rädern</translation>
    </message>
    <message>
        <source>Nothing to show: the car or the lane cannot be computed.</source>
        <translation>Nichts zu zeigen: Wagen oder Bahn lassen sich nicht berechnen.</translation>
    </message>
    <message>
        <source>Power lost</source>
        <translation>Verlorene Leistung</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>The heat along the lane, %1 from the start: %2, speed %3, front load %4</source>
        <translation>Der Lauf entlang der Bahn, %1 nach dem Start: %2, Geschwindigkeit %3, Vorderachslast %4</translation>
    </message>
    <message>
        <source>The heat along the lane. Move the mouse over it, or use the arrow keys, to read the numbers at a place.</source>
        <translation>Der Lauf entlang der Bahn. Fahr mit der Maus darüber, oder nimm die Pfeiltasten, um die Zahlen an einer Stelle zu lesen.</translation>
    </message>
    <message>
        <source>The heat along the lane: nothing to show, the car cannot be computed.</source>
        <translation>Der Lauf entlang der Bahn: nichts zu zeigen, der Wagen lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>along the surface</source>
        <translation>entlang der Bahn</translation>
    </message>
    <message>
        <source>axles</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>finish line, %1</source>
        <translation>Ziellinie, %1</translation>
    </message>
    <message>
        <source>heights × %1</source>
        <translation>Höhen × %1</translation>
    </message>
    <message>
        <source>hubs</source>
        <translation>Naben</translation>
    </message>
    <message>
        <source>mW</source>
        <translation>mW</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Schiene</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>scrub</source>
        <translation>Schräglauf</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>start line</source>
        <translation>Startlinie</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::CurvesPage</name>
    <message>
        <source>%1 cannot be written; choose another place or name.</source>
        <translation>%1 lässt sich nicht schreiben; wähl einen anderen Ort oder Namen.</translation>
    </message>
    <message>
        <source>&amp;Save Picture…</source>
        <translation>Bild &amp;speichern…</translation>
    </message>
    <message>
        <source>A heat along the lane</source>
        <translation>Ein Lauf entlang der Bahn</translation>
    </message>
    <message>
        <source>Copy &amp;Numbers</source>
        <translation>&amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;Picture</source>
        <translation>&amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Mouse or arrow keys: the numbers at a place.</source>
        <translation>Maus oder Pfeiltasten: die Zahlen an einer Stelle.</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg)</source>
        <translation>Bilder (*.png *.svg)</translation>
    </message>
    <message>
        <source>Save the Picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>The picture was not saved</source>
        <translation>Das Bild wurde nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::DifferenceTable</name>
    <message>
        <source>Alone worth</source>
        <translation>Allein wert</translation>
    </message>
    <message>
        <source>Each alone adds up to %1; all together %2 changes by %3. The %4 between is what the differences do to each other, or what cannot be tried alone.</source>
        <translation>Jeder allein ergibt zusammen %1; alle gemeinsam ändert sich %2 um %3. Die %4 dazwischen sind, was die Unterschiede miteinander tun, oder was sich allein nicht versuchen lässt.</translation>
    </message>
    <message>
        <source>Each line gives the first car that one difference alone and runs the heat: what the time becomes longer (+) or shorter by.</source>
        <translation>Jede Zeile gibt dem ersten Wagen diesen einen Unterschied allein und rechnet den Lauf: um wie viel die Zeit länger (+) oder kürzer wird.</translation>
    </message>
    <message>
        <source>One of the cars stops short of the finish: there is no whole to compare with.</source>
        <translation>Einer der Wagen bleibt vor dem Ziel stehen: es gibt kein Ganzes zum Vergleichen.</translation>
    </message>
    <message>
        <source>The two cars differ in nothing that is built.</source>
        <translation>Die beiden Wagen unterscheiden sich in nichts Gebautem.</translation>
    </message>
    <message>
        <source>Two different cars are needed.</source>
        <translation>Dazu braucht es zwei verschiedene Wagen.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What differs between the two cars</source>
        <translation>Was an den beiden Wagen verschieden ist</translation>
    </message>
    <message>
        <source>What differs, and what it is worth</source>
        <translation>Was verschieden ist, und was es wert ist</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird ausgerechnet…</translation>
    </message>
    <message>
        <source>not alone</source>
        <translation>nicht allein</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::DrawingActions</name>
    <message>
        <source>&amp;Add a Point After It</source>
        <translation>Punkt da&amp;hinter einfügen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <source>&amp;Mirror Across the Centre Line</source>
        <translation>An der &amp;Mittellinie spiegeln</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Align &amp;Bottoms</source>
        <translation>&amp;Unterseiten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;Front Faces</source>
        <translation>&amp;Vorderflächen ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;Left Faces</source>
        <translation>&amp;Linke Flächen ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;Rear Faces</source>
        <translation>&amp;Hinterflächen ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;Tops</source>
        <translation>&amp;Oberseiten ausrichten</translation>
    </message>
    <message>
        <source>Align Middles Along &amp;x (Tail to Nose)</source>
        <translation>Mitten entlang &amp;x ausrichten (Heck bis Nase)</translation>
    </message>
    <message>
        <source>Align Middles Along &amp;y (Side to Side)</source>
        <translation>Mitten entlang &amp;y ausrichten (Seite zu Seite)</translation>
    </message>
    <message>
        <source>Align Middles Along &amp;z (Height)</source>
        <translation>Mitten entlang &amp;z ausrichten (Höhe)</translation>
    </message>
    <message>
        <source>Align Ri&amp;ght Faces</source>
        <translation>&amp;Rechte Flächen ausrichten</translation>
    </message>
    <message>
        <source>Arra&amp;nge</source>
        <translation>An&amp;ordnen</translation>
    </message>
    <message>
        <source>Corner or &amp;Smooth</source>
        <translation>Ecke oder &amp;glatt</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Au&amp;sschneiden</translation>
    </message>
    <message>
        <source>Draw a &amp;Bore</source>
        <translation>&amp;Bohrung zeichnen</translation>
    </message>
    <message>
        <source>Draw a P&amp;ocket</source>
        <translation>&amp;Tasche zeichnen</translation>
    </message>
    <message>
        <source>Loc&amp;ked in Place</source>
        <translation>&amp;Fest an seinem Platz</translation>
    </message>
    <message>
        <source>Mirror a &amp;Copy</source>
        <translation>Gespiegelte &amp;Kopie</translation>
    </message>
    <message>
        <source>R&amp;emove</source>
        <translation>E&amp;ntfernen</translation>
    </message>
    <message>
        <source>S&amp;pace Evenly Along y</source>
        <translation>Entlang y glei&amp;chmäßig verteilen</translation>
    </message>
    <message>
        <source>Se&amp;lect All</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Space &amp;Evenly Along x</source>
        <translation>Entlang x &amp;gleichmäßig verteilen</translation>
    </message>
    <message>
        <source>Space E&amp;venly Along z</source>
        <translation>Entlang z gleichmäßig ver&amp;teilen</translation>
    </message>
    <message>
        <source>To the Centre Li&amp;ne</source>
        <translation>Auf die Mittelli&amp;nie</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::DrawnPart</name>
    <message>
        <source>%1 ahead of the rear axle</source>
        <translation>%1 vor der Hinterachse</translation>
    </message>
    <message>
        <source>%1 from the tail, %2 left of the middle, %3 above the wood&apos;s bottom</source>
        <translation>%1 vom Heck, %2 links der Mitte, %3 über der Unterseite des Holzes</translation>
    </message>
    <message>
        <source>Balance point</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Front load</source>
        <translation>Vorderachslast</translation>
    </message>
    <message>
        <source>Wheel %1</source>
        <translation>Rad %1</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>angehoben</translation>
    </message>
    <message>
        <source>touches the track</source>
        <translation>berührt die Bahn</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::DrawsBar</name>
    <message>
        <source>%L1 heats drawn, seed %2</source>
        <translation>%L1 Läufe gezogen, Startzahl %2</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Draw Again</source>
        <translation>&amp;Neu ziehen</translation>
    </message>
    <message>
        <source>Drawing heats…</source>
        <translation>Läufe werden gezogen…</translation>
    </message>
    <message>
        <source>Draws done</source>
        <translation>Fertige Ziehungen</translation>
    </message>
    <message>
        <source>Other &amp;Draws</source>
        <translation>Andere &amp;Ziehungen</translation>
    </message>
    <message>
        <source>Stopped. Nothing is shown of draws that were not finished.</source>
        <translation>Angehalten. Von unfertigen Ziehungen wird nichts gezeigt.</translation>
    </message>
    <message>
        <source>Stops the draws; nothing else waits for them</source>
        <translation>Hält die Ziehungen an; sonst wartet nichts auf sie</translation>
    </message>
    <message>
        <source>The same question with other chances: if the answer moves, it was not sure in that digit</source>
        <translation>Dieselbe Frage mit anderen Zufällen: bewegt sich die Antwort, war sie in dieser Stelle nicht sicher</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::EnergyPanel</name>
    <message>
        <source>%1 from the ramp, %2 left at the finish</source>
        <translation>%1 von der Rampe, %2 bleiben im Ziel</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>Energy released</source>
        <translation>Freigesetzte Energie</translation>
    </message>
    <message>
        <source>Flattening of tread and lane where they touch.</source>
        <translation>Walken von Lauffläche und Bahn, wo sie sich berühren.</translation>
    </message>
    <message>
        <source>Hubs</source>
        <translation>Naben</translation>
    </message>
    <message>
        <source>Pushing the air aside, and the air the wheels stir. A lower, smoother body takes less.</source>
        <translation>Die Luft beiseiteschieben, und die Luft, die die Räder rühren. Ein flacher, glatter Körper nimmt weniger.</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Schiene</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>Rubbing and bouncing along the lane&apos;s guide rail.</source>
        <translation>Reiben und Prallen an der Führungsschiene der Bahn.</translation>
    </message>
    <message>
        <source>Rubbing of the hubs on axle heads or wood.</source>
        <translation>Reibung der Naben an Achsköpfen oder Holz.</translation>
    </message>
    <message>
        <source>Rubbing of the wheels&apos; bores on their axles. Smoother, better lubricated axles take less.</source>
        <translation>Reibung der Radbohrungen auf ihren Achsen. Glatter und besser geschmiert nehmen sie weniger.</translation>
    </message>
    <message>
        <source>Scrub</source>
        <translation>Schräglauf</translation>
    </message>
    <message>
        <source>Sliding sideways of wheels that do not point straight ahead.</source>
        <translation>Seitliches Rutschen von Rädern, die nicht geradeaus zeigen.</translation>
    </message>
    <message>
        <source>Where the energy goes</source>
        <translation>Wohin die Energie geht</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Figures</name>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <translation>%1 zu viel</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Breaks a rule</source>
        <translation>Bricht eine Regel</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Not taken: %1</source>
        <translation>Nicht genommen: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::FileDesk</name>
    <message>
        <source>%1
%2</source>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1 is open in another window too. What is saved in one replaces what was saved in the other.</source>
        <translation>%1 ist auch in einem anderen Fenster offen. Was im einen gespeichert wird, ersetzt, was im anderen gespeichert wurde.</translation>
    </message>
    <message>
        <source>%1 was changed by another program and has been read again.</source>
        <translation>%1 wurde von einem anderen Programm geändert und neu gelesen.</translation>
    </message>
    <message>
        <source>%1 was changed by another program. You have unsaved changes here.</source>
        <translation>%1 wurde von einem anderen Programm geändert. Du hast hier ungespeicherte Änderungen.</translation>
    </message>
    <message>
        <source>%1 was not saved when the program ended on %2.</source>
        <translation>%1 war nicht gespeichert, als das Programm am %2 endete.</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>A project without a file</source>
        <translation>Ein Projekt ohne Datei</translation>
    </message>
    <message>
        <source>Ask Later</source>
        <translation>Später fragen</translation>
    </message>
    <message>
        <source>Bring It Back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Go On</source>
        <translation>Weitermachen</translation>
    </message>
    <message>
        <source>Keep Mine</source>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <source>Open &amp;Recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open a Project</source>
        <translation>Projekt öffnen</translation>
    </message>
    <message>
        <source>Opened %1</source>
        <translation>%1 geöffnet</translation>
    </message>
    <message>
        <source>Rampwright projects (*.ramp.json);;All files (*)</source>
        <translation>Rampwright-Projekte (*.ramp.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save &amp;As…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save as Another File…</source>
        <translation>Als andere Datei speichern</translation>
    </message>
    <message>
        <source>Save the Project As</source>
        <translation>Projekt speichern unter</translation>
    </message>
    <message>
        <source>Save the changes to this project?</source>
        <translation>Die Änderungen an diesem Projekt speichern?</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Take Theirs</source>
        <translation>Deren nehmen</translation>
    </message>
    <message>
        <source>The file was changed by another program and cannot be read: %1</source>
        <translation>Die Datei wurde von einem anderen Programm geändert und lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>The project was not saved</source>
        <translation>Das Projekt wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>They are lost otherwise.</source>
        <translation>Sonst gehen sie verloren.</translation>
    </message>
    <message>
        <source>This project could not be opened</source>
        <translation>Dieses Projekt ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>Throw It Away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Unsaved work is not being kept aside: %1</source>
        <translation>Ungespeichertes wird nicht gesichert: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::FindingsPanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Nothing to put right</source>
        <translation>Nichts in Ordnung zu bringen</translation>
    </message>
    <message>
        <source>This car cannot be computed</source>
        <translation>Dieser Wagen lässt sich nicht berechnen</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>What does not fit, what breaks a rule, and what to keep an eye on. Each has the same number on the drawing.</source>
        <translation>Was nicht passt, was eine Regel bricht, und worauf zu achten ist. Jeder Befund hat dieselbe Nummer in der Zeichnung.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::HelpWindow</name>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
    <message>
        <source>Help – Rampwright</source>
        <translation>Hilfe – Rampwright</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::HoldingBox</name>
    <message>
        <source>How the weight stays in its cut on a bumpy lane. What holds it weighs too.</source>
        <translation>Wie das Gewicht auf holpriger Bahn in seinem Ausschnitt bleibt. Was es hält, wiegt auch etwas.</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::HouseRuleRow</name>
    <message>
        <source>Rule of the house %1</source>
        <translation>Hausregel %1</translation>
    </message>
    <message>
        <source>Set rule of the house %1</source>
        <translation>Hausregel %1 setzen</translation>
    </message>
    <message>
        <source>Strike out a rule of the house</source>
        <translation>Hausregel streichen</translation>
    </message>
    <message>
        <source>Strike out rule of the house %1</source>
        <translation>Hausregel %1 streichen</translation>
    </message>
    <message>
        <source>Strike out this rule</source>
        <translation>Diese Regel streichen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Inputs</name>
    <message>
        <source>Air stirred by the wheels</source>
        <translation>Luft, von den Rädern gerührt</translation>
    </message>
    <message>
        <source>Drag of the body&apos;s form</source>
        <translation>Luftwiderstand der Körperform</translation>
    </message>
    <message>
        <source>Friction of hubs on axle heads</source>
        <translation>Reibung der Naben an Achsköpfen</translation>
    </message>
    <message>
        <source>Friction of hubs on the wood</source>
        <translation>Reibung der Naben am Holz</translation>
    </message>
    <message>
        <source>Friction of the axles</source>
        <translation>Reibung der Achsen</translation>
    </message>
    <message>
        <source>Friction on the rail</source>
        <translation>Reibung an der Schiene</translation>
    </message>
    <message>
        <source>Grip of the treads</source>
        <translation>Haftung der Laufflächen</translation>
    </message>
    <message>
        <source>Height of %1</source>
        <translation>Höhe von %1</translation>
    </message>
    <message>
        <source>Height of the front axle</source>
        <translation>Höhe der Vorderachse</translation>
    </message>
    <message>
        <source>Height of the rear axle</source>
        <translation>Höhe der Hinterachse</translation>
    </message>
    <message>
        <source>How a tread rolls on its edge</source>
        <translation>Wie eine Lauffläche auf der Kante rollt</translation>
    </message>
    <message>
        <source>How sharply a car loses the rail</source>
        <translation>Wie plötzlich ein Wagen die Schiene verliert</translation>
    </message>
    <message>
        <source>How straight the axle holes are</source>
        <translation>Wie gerade die Achslöcher sind</translation>
    </message>
    <message>
        <source>How true %1 is drilled</source>
        <translation>Wie genau %1 gebohrt ist</translation>
    </message>
    <message>
        <source>How true the side outline is sawn</source>
        <translation>Wie genau der Seitenumriss gesägt ist</translation>
    </message>
    <message>
        <source>How true the top outline is sawn</source>
        <translation>Wie genau der Umriss von oben gesägt ist</translation>
    </message>
    <message>
        <source>How wheels bounce off the rail</source>
        <translation>Wie Räder von der Schiene abprallen</translation>
    </message>
    <message>
        <source>Kicks from the lane&apos;s joints</source>
        <translation>Stöße von den Fugen der Bahn</translation>
    </message>
    <message>
        <source>Mass of %1</source>
        <translation>Masse von %1</translation>
    </message>
    <message>
        <source>Mass of the axles</source>
        <translation>Masse der Achsen</translation>
    </message>
    <message>
        <source>Mass of the front left wheel</source>
        <translation>Masse des Rads vorn links</translation>
    </message>
    <message>
        <source>Mass of the front right wheel</source>
        <translation>Masse des Rads vorn rechts</translation>
    </message>
    <message>
        <source>Mass of the paint</source>
        <translation>Masse der Farbe</translation>
    </message>
    <message>
        <source>Mass of the rear left wheel</source>
        <translation>Masse des Rads hinten links</translation>
    </message>
    <message>
        <source>Mass of the rear right wheel</source>
        <translation>Masse des Rads hinten rechts</translation>
    </message>
    <message>
        <source>Mass of the wood</source>
        <translation>Masse des Holzes</translation>
    </message>
    <message>
        <source>Mass of what holds %1</source>
        <translation>Masse dessen, was %1 hält</translation>
    </message>
    <message>
        <source>Place of %1 along the car</source>
        <translation>Ort von %1 entlang des Wagens</translation>
    </message>
    <message>
        <source>Place of the front axle</source>
        <translation>Ort der Vorderachse</translation>
    </message>
    <message>
        <source>Place of the nose</source>
        <translation>Ort der Nase</translation>
    </message>
    <message>
        <source>Place of the rear axle</source>
        <translation>Ort der Hinterachse</translation>
    </message>
    <message>
        <source>Rolling resistance of the treads</source>
        <translation>Rollwiderstand der Laufflächen</translation>
    </message>
    <message>
        <source>Scatter from run to run</source>
        <translation>Streuung von Lauf zu Lauf</translation>
    </message>
    <message>
        <source>Side force of a slanting tread</source>
        <translation>Seitenkraft einer schräg laufenden Lauffläche</translation>
    </message>
    <message>
        <source>Size of the front wheels</source>
        <translation>Größe der Vorderräder</translation>
    </message>
    <message>
        <source>Size of the rear wheels</source>
        <translation>Größe der Hinterräder</translation>
    </message>
    <message>
        <source>Size of the wheels&apos; bores</source>
        <translation>Größe der Radbohrungen</translation>
    </message>
    <message>
        <source>Sliding while riding the rail</source>
        <translation>Rutschen beim Anliegen an der Schiene</translation>
    </message>
    <message>
        <source>Sliding while touching the rail</source>
        <translation>Rutschen beim Berühren der Schiene</translation>
    </message>
    <message>
        <source>Steer that the lane&apos;s bumps take up</source>
        <translation>Spur, die die Unebenheiten der Bahn aufbrauchen</translation>
    </message>
    <message>
        <source>The measured balance point</source>
        <translation>Der gemessene Schwerpunkt</translation>
    </message>
    <message>
        <source>The measured centre height</source>
        <translation>Die gemessene Schwerpunkthöhe</translation>
    </message>
    <message>
        <source>The weighed front load</source>
        <translation>Die gewogene Vorderachslast</translation>
    </message>
    <message>
        <source>The weighed mass</source>
        <translation>Die gewogene Masse</translation>
    </message>
    <message>
        <source>Zero of the track&apos;s clock</source>
        <translation>Nullpunkt der Uhr an der Bahn</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>Ausschnitt %1</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Stück %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::InspectionView</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, by these rules: %2</source>
        <translation>%1, nach diesen Regeln: %2</translation>
    </message>
    <message>
        <source>%1, by these rules: %2 (%3)</source>
        <translation>%1, nach diesen Regeln: %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2. Limit: %3. The car has: %4, %5.</source>
        <translation>%1: %2. Grenze: %3. Der Wagen hat: %4, %5.</translation>
    </message>
    <message>
        <source>%1: %2. Limit: %3. The car has: %4.</source>
        <translation>%1: %2. Grenze: %3. Der Wagen hat: %4.</translation>
    </message>
    <message>
        <source>%1: nothing on the drawing shows it. Look at the car itself.</source>
        <translation>%1: nichts in der Zeichnung zeigt es. Sieh dir den Wagen selbst an.</translation>
    </message>
    <message>
        <source>%1: the project states no rules. Ask for the local ones.</source>
        <translation>%1: das Projekt nennt keine Regeln. Frag nach den örtlichen.</translation>
    </message>
    <message>
        <source>Every rule of the race and how the car stands. A click on a row, or Return, shows its place on the drawing.</source>
        <translation>Jede Regel des Rennens und wie der Wagen dazu steht. Ein Klick auf eine Zeile, oder Eingabe, zeigt ihre Stelle in der Zeichnung.</translation>
    </message>
    <message>
        <source>How it is looked at</source>
        <translation>Wie es geprüft wird</translation>
    </message>
    <message>
        <source>Inspection list</source>
        <translation>Abnahmeliste</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>The car cannot be computed, so no rule is decided.</source>
        <translation>Der Wagen lässt sich nicht berechnen, also ist keine Regel entschieden.</translation>
    </message>
    <message>
        <source>The car has</source>
        <translation>Der Wagen hat</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Lane</name>
    <message>
        <source>finish</source>
        <translation>Lack</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::LanePage</name>
    <message>
        <source>%1. From start line to finish line %2; the start line is %3 above the lowest point; first slope %4.</source>
        <translation>%1. Von der Startlinie zur Ziellinie %2; die Startlinie liegt %3 über dem tiefsten Punkt; erstes Gefälle %4.</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s); they lie within %1 of the curve, %2 in the mean (root of squares).</source>
        <translation>
            <numerusform>%n Punkt; er liegt auf %1 an der Kurve, im Mittel auf %2 (quadratisches Mittel).</numerusform>
            <numerusform>%n Punkte; sie liegen auf %1 an der Kurve, im Mittel auf %2 (quadratisches Mittel).</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;How to Measure</source>
        <translation>&amp;Wie man misst</translation>
    </message>
    <message>
        <source>&amp;Use These Points</source>
        <translation>Diese Punkte &amp;nehmen</translation>
    </message>
    <message>
        <source>A Lane from a File</source>
        <translation>Bahn aus einer Datei</translation>
    </message>
    <message>
        <source>Add &amp;Bend</source>
        <translation>&amp;Bogen hinzufügen</translation>
    </message>
    <message>
        <source>Add S&amp;traight</source>
        <translation>Ge&amp;rade hinzufügen</translation>
    </message>
    <message>
        <source>Behind the chosen piece, or at the end.</source>
        <translation>Hinter das gewählte Stück, oder ans Ende.</translation>
    </message>
    <message>
        <source>By &amp;Pieces</source>
        <translation>Aus &amp;Stücken</translation>
    </message>
    <message>
        <source>Fall known to ±</source>
        <translation>Fallhöhe bekannt auf ±</translation>
    </message>
    <message>
        <source>Finish line</source>
        <translation>Ziellinie</translation>
    </message>
    <message>
        <source>First slope</source>
        <translation>Erstes Gefälle</translation>
    </message>
    <message>
        <source>From a Fi&amp;le…</source>
        <translation>Aus &amp;Datei…</translation>
    </message>
    <message>
        <source>Lane measured</source>
        <translation>Bahn gemessen</translation>
    </message>
    <message>
        <source>Lane not measured yet</source>
        <translation>Bahn noch nicht gemessen</translation>
    </message>
    <message>
        <source>Lane, %1</source>
        <translation>Bahn, %1</translation>
    </message>
    <message>
        <source>Lanes to choose from</source>
        <translation>Bahnen zur Auswahl</translation>
    </message>
    <message>
        <source>Measured P&amp;oints</source>
        <translation>&amp;Gemessene Punkte</translation>
    </message>
    <message>
        <source>Measured points: X and Z, one point a line</source>
        <translation>Gemessene Punkte: X und Z, je Zeile ein Punkt</translation>
    </message>
    <message>
        <source>Nobody has measured this lane &amp;yet</source>
        <translation>Diese Bahn hat noch nieman&amp;d gemessen</translation>
    </message>
    <message>
        <source>Of the surface at the start-gate end; negative downhill.</source>
        <translation>Der Bahn am Startende; bergab negativ.</translation>
    </message>
    <message>
        <source>One sigma of the height of the start line above the finish line.</source>
        <translation>Ein Sigma der Höhe der Startlinie über der Ziellinie.</translation>
    </message>
    <message>
        <source>One sigma of the way from the start line to the finish line.</source>
        <translation>Ein Sigma des Wegs von der Startlinie zur Ziellinie.</translation>
    </message>
    <message>
        <source>Paste or type points, then use them instead of the pieces.</source>
        <translation>Füg Punkte ein oder tipp sie, dann nimm sie statt der Stücke.</translation>
    </message>
    <message>
        <source>Projects and lanes (*.json);;All files (*)</source>
        <translation>Projekte und Bahnen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Put &amp;In</source>
        <translation>E&amp;insetzen</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Save This Lan&amp;e…</source>
        <translation>Bahn s&amp;peichern…</translation>
    </message>
    <message>
        <source>Save This Lane</source>
        <translation>Diese Bahn speichern</translation>
    </message>
    <message>
        <source>Start line</source>
        <translation>Startlinie</translation>
    </message>
    <message>
        <source>Takes the chosen piece out.</source>
        <translation>Nimmt das gewählte Stück heraus.</translation>
    </message>
    <message>
        <source>Takes the place of this project&apos;s lane; Ctrl+Z brings the old one back.</source>
        <translation>Tritt an die Stelle der Bahn dieses Projekts; Strg+Z bringt die alte zurück.</translation>
    </message>
    <message>
        <source>The shape is then a guess: fall and way are known only so well, and the time says so.</source>
        <translation>Die Form ist dann eine Schätzung: Fallhöhe und Weg sind nur so genau bekannt, und die Zeit sagt es.</translation>
    </message>
    <message>
        <source>This lane</source>
        <translation>Diese Bahn</translation>
    </message>
    <message>
        <source>Way known to ±</source>
        <translation>Weg bekannt auf ±</translation>
    </message>
    <message>
        <source>Where the clock stops, along the surface from the start-gate end.</source>
        <translation>Wo die Uhr anhält, entlang der Bahn vom Startende.</translation>
    </message>
    <message>
        <source>Where the nose waits, along the surface from the start-gate end.</source>
        <translation>Wo die Nase wartet, entlang der Bahn vom Startende.</translation>
    </message>
    <message>
        <source>X and Z of the surface, one point a line, from the start-gate end:
0  1240
250  1134
500  1029
…</source>
        <translation>X und Z der Bahn, je Zeile ein Punkt, vom Startende an:
0  1240
250  1134
500  1029
…</translation>
    </message>
    <message>
        <source>lane: %1</source>
        <translation>Bahn: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::LaneView</name>
    <message>
        <source>The lane cannot be drawn: %1</source>
        <translation>Die Bahn lässt sich nicht zeichnen: %1</translation>
    </message>
    <message>
        <source>The lane in section. Click a piece to choose it; the arrow keys go to the next. Drag the start or finish line.</source>
        <translation>Die Bahn im Schnitt. Klick ein Stück an, um es zu wählen; die Pfeiltasten gehen zum nächsten. Zieh die Start- oder Ziellinie.</translation>
    </message>
    <message>
        <source>The lane: %1 from the start line to the finish line, the start line %2 high</source>
        <translation>Die Bahn: %1 von der Startlinie zur Ziellinie, die Startlinie %2 hoch</translation>
    </message>
    <message>
        <source>heights × %1</source>
        <translation>Höhen × %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Language</name>
    <message>
        <source>As the &amp;System</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>Rampwright speaks the new language from its next start.</source>
        <translation>Rampwright spricht die neue Sprache ab dem nächsten Start.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Limits</name>
    <message>
        <source>allowed: %1</source>
        <translation>erlaubt: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::LoadSlip</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, etwa %2</translation>
    </message>
    <message>
        <source>%1, locked</source>
        <translation>%1, fest</translation>
    </message>
    <message>
        <source>&amp;Mass</source>
        <translation>&amp;Masse</translation>
    </message>
    <message>
        <source>&amp;Put in the Car</source>
        <translation>In den Wagen &amp;legen</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>E&amp;ntfernen</translation>
    </message>
    <message>
        <source>A locked piece is not moved, neither by hand nor by the planner: for what is glued in.</source>
        <translation>Ein festes Stück wird nicht verschoben, weder von Hand noch vom Planer: für Eingeklebtes.</translation>
    </message>
    <message>
        <source>A typical mass: weigh yours, ten at a time.</source>
        <translation>Eine übliche Masse: wieg deine, zehn auf einmal.</translation>
    </message>
    <message>
        <source>Choose what holds the ballast</source>
        <translation>Wählen, was den Ballast hält</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>D&amp;uplizieren</translation>
    </message>
    <message>
        <source>Drag a piece to the drawing, or click it and click there.</source>
        <translation>Zieh ein Stück in die Zeichnung, oder klick es an und klick dort.</translation>
    </message>
    <message>
        <source>From the &amp;shelf</source>
        <translation>Aus dem &amp;Regal</translation>
    </message>
    <message>
        <source>From the &amp;tail</source>
        <translation>Vom &amp;Heck</translation>
    </message>
    <message>
        <source>Glue, a screw, a plug: it weighs too.</source>
        <translation>Kleber, eine Schraube, ein Stopfen: auch das wiegt.</translation>
    </message>
    <message>
        <source>Hei&amp;ght</source>
        <translation>H&amp;öhe</translation>
    </message>
    <message>
        <source>Held &amp;by</source>
        <translation>Gehalten v&amp;on</translation>
    </message>
    <message>
        <source>How far the middle of the piece is above the bottom of the wood.</source>
        <translation>Wie weit die Mitte des Stücks über der Unterseite des Holzes liegt.</translation>
    </message>
    <message>
        <source>How far the middle of the piece is ahead of the tail.</source>
        <translation>Wie weit die Mitte des Stücks vor dem Heck liegt.</translation>
    </message>
    <message>
        <source>How far the middle of the piece is to the car&apos;s left of its centre line; negative is to the right.</source>
        <translation>Wie weit die Mitte des Stücks links von der Mittellinie des Wagens liegt; negativ ist rechts.</translation>
    </message>
    <message>
        <source>Lies &amp;in</source>
        <translation>Liegt i&amp;n</translation>
    </message>
    <message>
        <source>Loc&amp;ked in place</source>
        <translation>&amp;Fest an seinem Platz</translation>
    </message>
    <message>
        <source>Mass of the piece</source>
        <translation>Masse des Stücks</translation>
    </message>
    <message>
        <source>Mass of what holds the piece</source>
        <translation>Masse dessen, was das Stück hält</translation>
    </message>
    <message>
        <source>No ballast yet.</source>
        <translation>Noch kein Ballast.</translation>
    </message>
    <message>
        <source>Pieces of ballast</source>
        <translation>Ballaststücke</translation>
    </message>
    <message>
        <source>Place of the piece, %1</source>
        <translation>Ort des Stücks, %1</translation>
    </message>
    <message>
        <source>Puts a household piece on the shelf, with a typical mass: weigh yours, ten at a time.</source>
        <translation>Legt ein Teil aus dem Haushalt ins Regal, mit üblicher Masse: wieg deine, zehn auf einmal.</translation>
    </message>
    <message>
        <source>Puts the chosen piece into the last pocket or bore, or on the wood midway between the axles where there is none. Then move it to its place.</source>
        <translation>Legt das gewählte Stück in die letzte Tasche oder Bohrung, oder auf das Holz mitten zwischen die Achsen, wo es keine gibt. Schieb es dann an seinen Platz.</translation>
    </message>
    <message>
        <source>T&amp;o the left</source>
        <translation>N&amp;ach links</translation>
    </message>
    <message>
        <source>The cut the piece lies in</source>
        <translation>Der Ausschnitt, in dem das Stück liegt</translation>
    </message>
    <message>
        <source>The weights in this car. Choose one to see its fields below; it is marked on the drawing too.</source>
        <translation>Die Gewichte in diesem Wagen. Wähl eines, um unten seine Felder zu sehen; es ist auch in der Zeichnung markiert.</translation>
    </message>
    <message>
        <source>Washers, Nuts, Scre&amp;ws</source>
        <translation>Scheiben, Muttern, S&amp;chrauben</translation>
    </message>
    <message>
        <source>What holds the piece</source>
        <translation>Was das Stück hält</translation>
    </message>
    <message>
        <source>What that weighs.</source>
        <translation>Was das wiegt.</translation>
    </message>
    <message>
        <source>What the glue, the screw or the plug weighs: weigh the car before and after. Left empty, what is typical counts, in grey.</source>
        <translation>Was Kleber, Schraube oder Stopfen wiegen: wieg den Wagen vorher und nachher. Bleibt es leer, zählt das Übliche, in Grau.</translation>
    </message>
    <message>
        <source>What the piece weighs. Type it in any unit: 28.4 g, 1 oz. Weigh it if you can.</source>
        <translation>Was das Stück wiegt. Tipp es in einer beliebigen Einheit: 28,4 g, 1 oz. Wieg es, wenn du kannst.</translation>
    </message>
    <message>
        <source>Which pocket or bore holds it: what sticks out of that is told.</source>
        <translation>Welche Tasche oder Bohrung es hält: was herausragt, wird gemeldet.</translation>
    </message>
    <message>
        <source>mass of %1</source>
        <translation>Masse von %1</translation>
    </message>
    <message>
        <source>mass of what holds %1</source>
        <translation>Masse dessen, was %1 hält</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>place of %1</source>
        <translation>Ort von %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::MainWindow</name>
    <message>
        <source>%1 (%2)[*] – Rampwright</source>
        <translation>%1 (%2)[*] – Rampwright</translation>
    </message>
    <message numerus="yes">
        <source>%n timed run(s) stay in the old file.</source>
        <translation>
            <numerusform>%n gestoppter Lauf bleibt in der alten Datei.</numerusform>
            <numerusform>%n gestoppte Läufe bleiben in der alten Datei.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) of the old project&apos;s model went into the cars.</source>
        <translation>
            <numerusform>%n Wert aus dem Modell des alten Projekts kam in die Wagen.</numerusform>
            <numerusform>%n Werte aus dem Modell des alten Projekts kamen in die Wagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;About Rampwright</source>
        <translation>Ü&amp;ber Rampwright</translation>
    </message>
    <message>
        <source>&amp;Car</source>
        <translation>&amp;Wagen</translation>
    </message>
    <message>
        <source>&amp;Cars in %1</source>
        <translation>&amp;Wagen in %1</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Duplicate to Try Something</source>
        <translation>&amp;Duplizieren, um etwas zu versuchen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Energy and Findings</source>
        <translation>&amp;Energie und Befunde</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;History</source>
        <translation>&amp;Verlauf</translation>
    </message>
    <message>
        <source>&amp;Keyboard Shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>&amp;Millimetres and Grams</source>
        <translation>&amp;Millimeter und Gramm</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Previous Car</source>
        <translation>&amp;Voriger Wagen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Remove from the Project</source>
        <translation>Aus dem Projekt &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Slip of the Step</source>
        <translation>Zettel des &amp;Schritts</translation>
    </message>
    <message>
        <source>&amp;Take In</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Take In a Car from Another File…</source>
        <translation>Wagen aus &amp;anderer Datei übernehmen…</translation>
    </message>
    <message>
        <source>&amp;The Model and Its Sources</source>
        <translation>Das &amp;Modell und seine Quellen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;User Guide</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Welcome</source>
        <translation>W&amp;illkommen</translation>
    </message>
    <message>
        <source>2 of 3: choose another car above the drawing, and see where its energy goes. Ctrl+Z takes back anything you did.</source>
        <translation>2 von 3: wähl über der Zeichnung einen anderen Wagen und sieh, wohin seine Energie geht. Strg+Z nimmt alles zurück, was du getan hast.</translation>
    </message>
    <message>
        <source>3 of 3: follow the ruler at the top from left to right to plan a car of your own: File, New starts with a plain block.</source>
        <translation>3 von 3: folg dem Lineal oben von links nach rechts, um deinen eigenen Wagen zu planen: Datei, Neu beginnt mit einem einfachen Klotz.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Rampwright %1&lt;/b&gt;&lt;p&gt;Build planning for unpowered gravity racers.&lt;p&gt;Free software under the GNU General Public License, version 3 or later.</source>
        <translation>&lt;b&gt;Rampwright %1&lt;/b&gt;&lt;p&gt;Bauplanung für Schwerkraftrenner ohne Antrieb.&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder später.</translation>
    </message>
    <message>
        <source>About Rampwright</source>
        <translation>Über Rampwright</translation>
    </message>
    <message>
        <source>Answers on the &amp;Left</source>
        <translation>Antworten &amp;links</translation>
    </message>
    <message>
        <source>As it was opened</source>
        <translation>Wie beim Öffnen</translation>
    </message>
    <message>
        <source>Cars</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Cars in the file</source>
        <translation>Wagen in der Datei</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Copied: a table for a message or a spreadsheet.</source>
        <translation>Kopiert: eine Tabelle für eine Nachricht oder ein Rechenblatt.</translation>
    </message>
    <message>
        <source>Copy All &amp;Figures</source>
        <translation>Alle &amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>Copy the Note</source>
        <translation>Notiz kopieren</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>Export &amp;Templates…</source>
        <translation>S&amp;chablonen ausgeben…</translation>
    </message>
    <message>
        <source>Inches and O&amp;unces</source>
        <translation>Zoll und &amp;Unzen</translation>
    </message>
    <message>
        <source>Lane or air are others: times change.</source>
        <translation>Bahn oder Luft sind andere: die Zeiten ändern sich.</translation>
    </message>
    <message>
        <source>Last time Rampwright was ended by a fault of its own. What it noted stays on this computer; copy it if you want to report it.</source>
        <translation>Letztes Mal wurde Rampwright durch einen eigenen Fehler beendet. Was es notiert hat, bleibt auf diesem Rechner; kopier es, wenn du den Fehler melden willst.</translation>
    </message>
    <message>
        <source>Lay a Picture under the Side &amp;View…</source>
        <translation>Bild unter die Seitenans&amp;icht legen…</translation>
    </message>
    <message>
        <source>Lay a Picture under the Top Vie&amp;w…</source>
        <translation>Bild &amp;unter die Draufsicht legen…</translation>
    </message>
    <message>
        <source>Li&amp;ght</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Ne&amp;xt Car</source>
        <translation>&amp;Nächster Wagen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>No car was taken in</source>
        <translation>Kein Wagen wurde übernommen</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Re&amp;name…</source>
        <translation>&amp;Umbenennen…</translation>
    </message>
    <message>
        <source>Read the Side Outl&amp;ine from SVG…</source>
        <translation>Seitenumriss aus SVG &amp;lesen…</translation>
    </message>
    <message>
        <source>Read the Top Outline fro&amp;m SVG…</source>
        <translation>U&amp;mriss von oben aus SVG lesen…</translation>
    </message>
    <message>
        <source>Rename the Car</source>
        <translation>Wagen umbenennen</translation>
    </message>
    <message>
        <source>S&amp;tep</source>
        <translation>Schr&amp;itt</translation>
    </message>
    <message>
        <source>Start a New Car</source>
        <translation>Neuen Wagen beginnen</translation>
    </message>
    <message>
        <source>Stay with the Demo</source>
        <translation>Beim Beispiel bleiben</translation>
    </message>
    <message>
        <source>Take In Cars</source>
        <translation>Wagen übernehmen</translation>
    </message>
    <message>
        <source>Take In a Car from Another File</source>
        <translation>Einen Wagen aus einer anderen Datei übernehmen</translation>
    </message>
    <message>
        <source>Taken in: %1.</source>
        <translation>Übernommen: %1.</translation>
    </message>
    <message>
        <source>The &amp;Whole Car…</source>
        <translation>Der ganze &amp;Wagen…</translation>
    </message>
    <message>
        <source>They will race by this project&apos;s rules, lane and air. Their timed runs stay in their own file.</source>
        <translation>Sie fahren nach den Regeln dieses Projekts, auf seiner Bahn und in seiner Luft. Ihre gestoppten Läufe bleiben in ihrer eigenen Datei.</translation>
    </message>
    <message>
        <source>This project&apos;s rules are others: look at the Agree step.</source>
        <translation>Die Regeln dieses Projekts sind andere: sieh dir den Schritt „Regeln“ an.</translation>
    </message>
    <message>
        <source>Views of this step</source>
        <translation>Ansichten dieses Schritts</translation>
    </message>
    <message>
        <source>Welcome to Harbour Hall race night. 1 of 3: grab a grey weight on the drawing and slide it towards the tail. Watch the heat time.</source>
        <translation>Willkommen beim Rennabend in der Hafenhalle. 1 von 3: fass ein graues Gewicht in der Zeichnung und schieb es zum Heck. Achte auf die Laufzeit.</translation>
    </message>
    <message>
        <source>What Is T&amp;his?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>Zoom &amp;In</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;Out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Zoom to &amp;Fit</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::MarkPlot</name>
    <message>
        <source>%1 against %2</source>
        <translation>%1 über %2</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Marks</name>
    <message>
        <source>front load</source>
        <translation>Vorderachslast</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::MeasureDialog</name>
    <message>
        <source>&amp;Distance</source>
        <translation>&amp;Abstand</translation>
    </message>
    <message>
        <source>&amp;Turn the picture so that they lie level</source>
        <translation>Bild so &amp;drehen, dass sie waagerecht liegen</translation>
    </message>
    <message>
        <source>178, or 7 in</source>
        <translation>178 oder 7 in</translation>
    </message>
    <message>
        <source>7, or 178 mm</source>
        <translation>7 oder 178 mm</translation>
    </message>
    <message>
        <source>As the picture lies now the two places are %1 apart. How far apart are they on the car?</source>
        <translation>So wie das Bild jetzt liegt, sind die beiden Stellen %1 auseinander. Wie weit sind sie am Wagen auseinander?</translation>
    </message>
    <message>
        <source>Scale of the Picture</source>
        <translation>Maßstab des Bilds</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::MeasuredEntry</name>
    <message>
        <source>%1, uncertainty</source>
        <translation>%1, Unsicherheit</translation>
    </message>
    <message>
        <source>Line %1 is not a time and a speed: “%2”</source>
        <translation>Zeile %1 ist nicht Zeit und Drehzahl: „%2“</translation>
    </message>
    <message>
        <source>The standard uncertainty of the reading: about two of three readings lie within it. Empty for none.</source>
        <translation>Die Standardunsicherheit der Ablesung: etwa zwei von drei Ablesungen liegen darin. Leer für keine.</translation>
    </message>
    <message>
        <source>The times do not rise</source>
        <translation>Die Zeiten steigen nicht</translation>
    </message>
    <message>
        <source>write the readings in the order of time</source>
        <translation>schreib die Ablesungen in der Reihenfolge der Zeit</translation>
    </message>
    <message>
        <source>write two numbers with a space, a tab or a semicolon between</source>
        <translation>schreib zwei Zahlen mit Leerzeichen, Tabulator oder Semikolon dazwischen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::OutlineDialog</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n closed line(s), the largest first. Choose the one that is the outline.</source>
        <translation>
            <numerusform>%n geschlossene Linie. Wähl die, die der Umriss ist.</numerusform>
            <numerusform>%n geschlossene Linien, die größte zuerst. Wähl die, die der Umriss ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n copy/copies of other parts (&quot;use&quot;) left out.</source>
        <translation>
            <numerusform>%n Kopie anderer Teile (&quot;use&quot;) weggelassen.</numerusform>
            <numerusform>%n Kopien anderer Teile (&quot;use&quot;) weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open line(s) left out.</source>
        <translation>
            <numerusform>%n offene Linie weggelassen.</numerusform>
            <numerusform>%n offene Linien weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s), nowhere farther than %1 from the line.</source>
        <translation>
            <numerusform>%n Punkt, nirgends weiter als %1 von der Linie.</numerusform>
            <numerusform>%n Punkte, nirgends weiter als %1 von der Linie.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Factor</source>
        <translation>&amp;Faktor</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>&amp;Mirror it: its nose points left</source>
        <translation>&amp;Spiegeln: die Nase zeigt nach links</translation>
    </message>
    <message>
        <source>&amp;Take It In</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>Closed lines of the drawing, largest first</source>
        <translation>Geschlossene Linien der Zeichnung, die größte zuerst</translation>
    </message>
    <message>
        <source>Following the line…</source>
        <translation>Der Linie wird gefolgt…</translation>
    </message>
    <message>
        <source>How long the outline is to be, in any unit: its height follows.</source>
        <translation>Wie lang der Umriss sein soll, in jeder Einheit: seine Höhe folgt daraus.</translation>
    </message>
    <message>
        <source>Not read: %1</source>
        <translation>Nicht gelesen: %1</translation>
    </message>
    <message>
        <source>Read as %1, taken in as %2. The block is %3 × %4.</source>
        <translation>Gelesen als %1, übernommen als %2. Der Klotz ist %3 × %4.</translation>
    </message>
    <message>
        <source>Read the Side Outline</source>
        <translation>Seitenumriss lesen</translation>
    </message>
    <message>
        <source>Read the Top Outline</source>
        <translation>Umriss von oben lesen</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>%1 wird gelesen…</translation>
    </message>
    <message>
        <source>The file does not state its size in a unit of length: 96 of its units were taken for an inch. Check the length below.</source>
        <translation>Die Datei nennt ihre Größe nicht in einer Längeneinheit: 96 ihrer Einheiten wurden für einen Zoll genommen. Prüf unten die Länge.</translation>
    </message>
    <message>
        <source>What the size that was read is multiplied with.</source>
        <translation>Womit die gelesene Größe malgenommen wird.</translation>
    </message>
    <message>
        <source>it would be longer than a metre; type its length or a factor</source>
        <translation>er wäre länger als ein Meter; tipp seine Länge oder einen Faktor</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::OutlinePreview</name>
    <message>
        <source>The outline that is read, over the present one</source>
        <translation>Der gelesene Umriss über dem jetzigen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PaperDesk</name>
    <message>
        <source>a project not saved yet</source>
        <translation>ein noch nicht gespeichertes Projekt</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PaperSlip</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>Da&amp;tum</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als P&amp;DF speichern…</translation>
    </message>
    <message>
        <source>100 mm</source>
        <translation>100 mm</translation>
    </message>
    <message>
        <source>A 100 mm bar that comes out at %1 was fitted to the page: print at actual size and measure again.</source>
        <translation>Ein 100-mm-Balken, der mit %1 herauskommt, wurde an die Seite angepasst: druck in tatsächlicher Größe und miss noch einmal.</translation>
    </message>
    <message>
        <source>A4, 210 × 297 mm</source>
        <translation>A4, 210 × 297 mm</translation>
    </message>
    <message>
        <source>Ctrl+P; print at 100 %, actual size</source>
        <translation>Strg+P; mit 100 % drucken, tatsächliche Größe</translation>
    </message>
    <message>
        <source>First heat &amp;at</source>
        <translation>Erster &amp;Lauf um</translation>
    </message>
    <message>
        <source>HH:MM</source>
        <translation>HH:MM</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Letter, 8.5 × 11 in</source>
        <translation>Letter, 8,5 × 11 in</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page back</source>
        <translation>Seite zurück</translation>
    </message>
    <message>
        <source>Page on</source>
        <translation>Seite weiter</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation>Pap&amp;ier</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Print and save</source>
        <translation>Drucken und speichern</translation>
    </message>
    <message>
        <source>Print the Build Sheet</source>
        <translation>Bauplan drucken</translation>
    </message>
    <message>
        <source>Print the template page, measure its 100 mm bar with a ruler, and type what you found: the next print makes up for it.</source>
        <translation>Druck die Schablonenseite, miss ihren 100-mm-Balken mit einem Lineal und tipp, was du gefunden hast: der nächste Druck gleicht es aus.</translation>
    </message>
    <message>
        <source>Printed &amp;bar measures</source>
        <translation>Balken gedruckt &amp;misst</translation>
    </message>
    <message>
        <source>Save One Page as Pic&amp;ture…</source>
        <translation>Eine Seite als &amp;Bild speichern…</translation>
    </message>
    <message>
        <source>Save Page %1 as a Picture</source>
        <translation>Seite %1 als Bild speichern</translation>
    </message>
    <message>
        <source>Save the Build Sheet</source>
        <translation>Bauplan speichern</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Sent to the printer. Measure the bars before you cut.</source>
        <translation>An den Drucker geschickt. Miss die Balken, bevor du schneidest.</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>%1 setzen</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Templates and bars are drawn %1 % of their size to make up for it.</source>
        <translation>Schablonen und Balken sind mit %1 % ihrer Größe gezeichnet, um das auszugleichen.</translation>
    </message>
    <message>
        <source>The page you are looking at, to send to somebody</source>
        <translation>Die Seite, die du gerade siehst, zum Verschicken</translation>
    </message>
    <message>
        <source>The paper in your printer. The templates are laid out for it at full size.</source>
        <translation>Das Papier in deinem Drucker. Die Schablonen werden dafür in wahrer Größe angeordnet.</translation>
    </message>
    <message>
        <source>The printer did not take the pages: see whether it is on and has paper.</source>
        <translation>Der Drucker hat die Seiten nicht angenommen: sieh nach, ob er an ist und Papier hat.</translation>
    </message>
    <message>
        <source>The race</source>
        <translation>Das Rennen</translation>
    </message>
    <message>
        <source>The sheet counts back from it: paint, glue, tuning.</source>
        <translation>Der Plan zählt von da zurück: Farbe, Kleber, Einstellen.</translation>
    </message>
    <message>
        <source>What holds %1</source>
        <translation>Was %1 hält</translation>
    </message>
    <message>
        <source>What holds each weight</source>
        <translation>Was jedes Gewicht hält</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>hour of the first heat</source>
        <translation>Uhrzeit des ersten Laufs</translation>
    </message>
    <message>
        <source>race date</source>
        <translation>Datum des Rennens</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PaperView</name>
    <message>
        <source>Pages of the build sheet</source>
        <translation>Seiten des Bauplans</translation>
    </message>
    <message>
        <source>Scroll across the page</source>
        <translation>Quer über die Seite schieben</translation>
    </message>
    <message>
        <source>Scroll pages</source>
        <translation>Seiten blättern</translation>
    </message>
    <message>
        <source>There is no sheet to show.
%1</source>
        <translation>Es ist kein Bauplan zu zeigen.
%1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PendulumView</name>
    <message>
        <source>&amp;Put It on the Car</source>
        <translation>Auf den Wagen &amp;setzen</translation>
    </message>
    <message>
        <source>Axle&apos;s line to a wire</source>
        <translation>Achslinie bis Faden</translation>
    </message>
    <message>
        <source>From where a wire is held above to where it holds the wheel.</source>
        <translation>Von dort, wo ein Faden oben gehalten wird, bis dort, wo er das Rad hält.</translation>
    </message>
    <message>
        <source>Full swings timed</source>
        <translation>Gestoppte volle Schwingungen</translation>
    </message>
    <message>
        <source>Full swings, there and back, that both times are of. More make the time of one surer.</source>
        <translation>Volle Schwingungen, hin und zurück, für die beide Zeiten gelten. Mehr davon machen die Zeit einer einzelnen sicherer.</translation>
    </message>
    <message>
        <source>Hang the wheel level on two or three equally long upright wires, its axle&apos;s line in the middle, twist it a little and time full swings, there and back. A plate that carries it is timed alone too; without one leave its mass at zero.</source>
        <translation>Häng das Rad waagerecht an zwei oder drei gleich lange, senkrechte Fäden, seine Achslinie in der Mitte, verdreh es ein wenig und stopp volle Schwingungen, hin und zurück. Eine Platte, die es trägt, wird auch allein gestoppt; ohne Platte lass ihre Masse bei null.</translation>
    </message>
    <message>
        <source>How far it turns from the middle to one side. A wide swing is slower.</source>
        <translation>Wie weit es sich aus der Mitte zu einer Seite dreht. Ein weiter Ausschlag ist langsamer.</translation>
    </message>
    <message>
        <source>How it hangs</source>
        <translation>Wie es hängt</translation>
    </message>
    <message>
        <source>How many wires it hangs on, all equally long and upright.</source>
        <translation>An wie vielen Fäden es hängt, alle gleich lang und senkrecht.</translation>
    </message>
    <message>
        <source>It hangs on</source>
        <translation>Es hängt an</translation>
    </message>
    <message>
        <source>It swings too quickly for what it weighs</source>
        <translation>Es schwingt zu schnell für das, was es wiegt</translation>
    </message>
    <message>
        <source>Mass, wires and time must be above zero</source>
        <translation>Masse, Fäden und Zeit müssen größer als null sein</translation>
    </message>
    <message>
        <source>Of all the full swings counted, there and back.</source>
        <translation>Aller gezählten vollen Schwingungen, hin und zurück.</translation>
    </message>
    <message>
        <source>Of as many full swings of the plate without the wheel.</source>
        <translation>Ebenso vieler voller Schwingungen der Platte ohne das Rad.</translation>
    </message>
    <message>
        <source>Plate weighs</source>
        <translation>Platte wiegt</translation>
    </message>
    <message>
        <source>Set spin inertia from the pendulum</source>
        <translation>Drehträgheit vom Pendel setzen</translation>
    </message>
    <message>
        <source>Spin inertia %1.</source>
        <translation>Drehträgheit %1.</translation>
    </message>
    <message>
        <source>Spin inertia %1; most of the doubt comes from %2.</source>
        <translation>Drehträgheit %1; der größte Zweifel kommt aus: %2.</translation>
    </message>
    <message>
        <source>Swing to one side</source>
        <translation>Ausschlag zur Seite</translation>
    </message>
    <message>
        <source>The swing or the wires cannot be so</source>
        <translation>Der Ausschlag oder die Fäden können so nicht sein</translation>
    </message>
    <message>
        <source>The wheel alone, on a pocket scale.</source>
        <translation>Das Rad allein, auf einer Taschenwaage.</translation>
    </message>
    <message>
        <source>Three wires</source>
        <translation>Drei Fäden</translation>
    </message>
    <message>
        <source>Time of the plate alone</source>
        <translation>Zeit der Platte allein</translation>
    </message>
    <message>
        <source>Time with the wheel</source>
        <translation>Zeit mit dem Rad</translation>
    </message>
    <message>
        <source>Two wires</source>
        <translation>Zwei Fäden</translation>
    </message>
    <message>
        <source>What carries the wheel on the wires; zero where nothing does.</source>
        <translation>Was das Rad an den Fäden trägt; null, wo nichts es trägt.</translation>
    </message>
    <message>
        <source>Wheel that takes it</source>
        <translation>Rad, das es bekommt</translation>
    </message>
    <message>
        <source>Wheel weighs</source>
        <translation>Rad wiegt</translation>
    </message>
    <message>
        <source>Which wheel of the car takes the spin inertia found.</source>
        <translation>Welches Rad des Wagens die gefundene Drehträgheit bekommt.</translation>
    </message>
    <message>
        <source>Wires apart</source>
        <translation>Fäden auseinander</translation>
    </message>
    <message>
        <source>Wires long</source>
        <translation>Fadenlänge</translation>
    </message>
    <message>
        <source>With two wires from one to the other; with three from the axle&apos;s line to any of them. A tenth of a millimetre counts.</source>
        <translation>Bei zwei Fäden von einem zum anderen; bei dreien von der Achslinie zu irgendeinem. Ein zehntel Millimeter zählt.</translation>
    </message>
    <message>
        <source>all wheels</source>
        <translation>alle Räder</translation>
    </message>
    <message>
        <source>look at the time, the number of swings and the wires</source>
        <translation>sieh auf die Zeit, die Zahl der Schwingungen und die Fäden</translation>
    </message>
    <message>
        <source>swing less than 90°, on wires longer than they are apart</source>
        <translation>schwing weniger als 90°, an Fäden, die länger sind als ihr Abstand</translation>
    </message>
    <message>
        <source>the plate&apos;s mass</source>
        <translation>die Masse der Platte</translation>
    </message>
    <message>
        <source>the plate&apos;s time</source>
        <translation>die Zeit der Platte</translation>
    </message>
    <message>
        <source>the time</source>
        <translation>die Zeit</translation>
    </message>
    <message>
        <source>the wheel&apos;s mass</source>
        <translation>die Masse des Rads</translation>
    </message>
    <message>
        <source>the wires&apos; length</source>
        <translation>die Länge der Fäden</translation>
    </message>
    <message>
        <source>type what was measured</source>
        <translation>tipp, was gemessen wurde</translation>
    </message>
    <message>
        <source>where the wires are</source>
        <translation>wo die Fäden sind</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PictureCorner</name>
    <message>
        <source>The Whole Car</source>
        <translation>Der ganze Wagen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PictureStore</name>
    <message>
        <source>Pictures (%1);;All files (*)</source>
        <translation>Bilder (%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The picture %1 cannot be read: %2</source>
        <translation>Das Bild %1 lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>The picture is not there: %1</source>
        <translation>Das Bild ist nicht da: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::PieceTable</name>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>By how much the slope changes; positive where it turns upward.</source>
        <translation>Um wie viel sich das Gefälle ändert; positiv, wo sie sich nach oben krümmt.</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschnitt</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Easing</source>
        <translation>Übergang</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From the tail</source>
        <translation>Vom Heck</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>In the order a car meets them.</source>
        <translation>In der Reihenfolge, in der ein Wagen sie trifft.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Of a straight piece, along the surface.</source>
        <translation>Eines geraden Stücks, entlang der Bahn.</translation>
    </message>
    <message>
        <source>Of the bend.</source>
        <translation>Des Bogens.</translation>
    </message>
    <message>
        <source>Over this length at each end the bend begins and ends softly.</source>
        <translation>Auf dieser Länge an jedem Ende beginnt und endet der Bogen weich.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Pieces of the lane, from the start-gate end</source>
        <translation>Stücke der Bahn, vom Startende an</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>To the left</source>
        <translation>Nach links</translation>
    </message>
    <message>
        <source>Turns by</source>
        <translation>Krümmt um</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>Gerade</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Race</name>
    <message>
        <source>%1 leads by %2</source>
        <translation>%1 führt mit %2</translation>
    </message>
    <message>
        <source>side by side</source>
        <translation>Seite an Seite</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::RacePanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Pause</source>
        <translation>&amp;Pause</translation>
    </message>
    <message>
        <source>&amp;Play</source>
        <translation>&amp;Abspielen</translation>
    </message>
    <message>
        <source>&amp;Slow, a quarter</source>
        <translation>&amp;Langsam, ein Viertel</translation>
    </message>
    <message>
        <source>Time since the start</source>
        <translation>Zeit seit dem Start</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::RaceView</name>
    <message>
        <source>The lane from the side</source>
        <translation>Die Bahn von der Seite</translation>
    </message>
    <message>
        <source>The lane from the side, with %1 and %2</source>
        <translation>Die Bahn von der Seite, mit %1 und %2</translation>
    </message>
    <message>
        <source>along with them, %1° downhill</source>
        <translation>mit ihnen, %1° bergab</translation>
    </message>
    <message>
        <source>along with them, on the level</source>
        <translation>mit ihnen, in der Ebene</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ReadingList</name>
    <message>
        <source>%1, a reading</source>
        <translation>%1, eine Ablesung</translation>
    </message>
    <message>
        <source>%1, add the reading</source>
        <translation>%1, Ablesung hinzufügen</translation>
    </message>
    <message>
        <source>%1, take back the reading %2</source>
        <translation>%1, Ablesung %2 zurücknehmen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; readings %2 apart</source>
        <translation>%1; Ablesungen %2 auseinander</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Dazu</translation>
    </message>
    <message>
        <source>Take this reading back</source>
        <translation>Diese Ablesung zurücknehmen</translation>
    </message>
    <message>
        <source>a reading, then Enter</source>
        <translation>eine Ablesung, dann Eingabe</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::RecentFiles</name>
    <message>
        <source>%1 (not there now)</source>
        <translation>%1 (jetzt nicht da)</translation>
    </message>
    <message>
        <source>&amp;Empty This List</source>
        <translation>Diese Liste l&amp;eeren</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::RuleRow</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rule: %1</source>
        <translation>Regel: %1</translation>
    </message>
    <message>
        <source>Set rule, %1</source>
        <translation>Regel setzen, %1</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>erlaubt</translation>
    </message>
    <message>
        <source>at least 3</source>
        <translation>mindestens 3</translation>
    </message>
    <message>
        <source>at least 4</source>
        <translation>mindestens 4</translation>
    </message>
    <message>
        <source>kinds, with commas</source>
        <translation>Sorten, mit Komma</translation>
    </message>
    <message>
        <source>no rule</source>
        <translation>keine Regel</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>nicht erlaubt</translation>
    </message>
    <message>
        <source>rule, %1</source>
        <translation>Regel, %1</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::RunSheet</name>
    <message>
        <source>Along the Lane</source>
        <translation>Entlang der Bahn</translation>
    </message>
    <message>
        <source>How Sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>Pages of the Run step</source>
        <translation>Seiten des Schritts Fahren</translation>
    </message>
    <message>
        <source>Speed, loads and losses of one heat, place by place.</source>
        <translation>Geschwindigkeit, Lasten und Verluste eines Laufs, Stelle für Stelle.</translation>
    </message>
    <message>
        <source>The Lane</source>
        <translation>Die Bahn</translation>
    </message>
    <message>
        <source>The lane&apos;s shape, its lines, and how well it is known.</source>
        <translation>Die Form der Bahn, ihre Linien, und wie gut sie bekannt ist.</translation>
    </message>
    <message>
        <source>Two Cars, One Clock</source>
        <translation>Zwei Wagen, eine Uhr</translation>
    </message>
    <message>
        <source>Two cars of the project under the same draws.</source>
        <translation>Zwei Wagen des Projekts unter denselben Ziehungen.</translation>
    </message>
    <message>
        <source>What Pays</source>
        <translation>Was sich lohnt</translation>
    </message>
    <message>
        <source>What you can still do, and what it brings.</source>
        <translation>Was du noch tun kannst, und was es bringt.</translation>
    </message>
    <message>
        <source>Where heats would fall, and what the spread comes from.</source>
        <translation>Wohin Läufe fallen würden, und woher die Streuung kommt.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ScaleFields</name>
    <message>
        <source>Choose the putty</source>
        <translation>Knete wählen</translation>
    </message>
    <message>
        <source>Most scales round to the nearest step; some cut off what is less than a step.</source>
        <translation>Die meisten Waagen runden auf den nächsten Schritt; manche schneiden ab, was kleiner ist als ein Schritt.</translation>
    </message>
    <message>
        <source>Putty</source>
        <translation>Knete</translation>
    </message>
    <message>
        <source>Set how the scale reads</source>
        <translation>Festlegen, wie die Waage zeigt</translation>
    </message>
    <message>
        <source>The putty you trim with: how much of it weighs a tenth follows from its density.</source>
        <translation>Die Knete, mit der du trimmst: wie viel davon ein Zehntel wiegt, folgt aus ihrer Dichte.</translation>
    </message>
    <message>
        <source>The scale</source>
        <translation>Die Waage</translation>
    </message>
    <message>
        <source>cuts off</source>
        <translation>schneidet ab</translation>
    </message>
    <message>
        <source>rounds to the nearest</source>
        <translation>rundet auf den nächsten</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ScaleWords</name>
    <message>
        <source>On the scales</source>
        <translation>Auf den Waagen</translation>
    </message>
    <message>
        <source>The rules set no greatest mass.</source>
        <translation>Die Regeln setzen keine größte Masse.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ShapePicker</name>
    <message>
        <source>Gives the wood this outline, as large as your block. Pockets and weights stay.</source>
        <translation>Gibt dem Holz diesen Umriss, so groß wie dein Klotz. Taschen und Gewichte bleiben.</translation>
    </message>
    <message>
        <source>Start from the shape %1</source>
        <translation>Mit der Form %1 beginnen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ShapeSlip</name>
    <message>
        <source>Cut into it</source>
        <translation>Hineinschneiden</translation>
    </message>
    <message>
        <source>Points, pockets and bores</source>
        <translation>Punkte, Taschen und Bohrungen</translation>
    </message>
    <message>
        <source>Start from a shape</source>
        <translation>Mit einer Form beginnen</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Nachzeichnen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Sheet</name>
    <message>
        <source>%1  no. %2</source>
        <translation>%1  Nr. %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 bit</source>
        <translation>Bohrer %1 %2</translation>
    </message>
    <message>
        <source>%1 %2 bit in a drill press</source>
        <translation>Bohrer %1 %2 in der Ständerbohrmaschine</translation>
    </message>
    <message>
        <source>%1 %2 bit in a jig</source>
        <translation>Bohrer %1 %2 in einer Lehre</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (bore ⌀ %2)</source>
        <translation>%1 (Bohrung ⌀ %2)</translation>
    </message>
    <message>
        <source>%1 (pocket)</source>
        <translation>%1 (Tasche)</translation>
    </message>
    <message>
        <source>%1 days before</source>
        <translation>%1 Tage vorher</translation>
    </message>
    <message>
        <source>%1 deep from the sawn %3</source>
        <translation>%1 tief von der gesägten %3</translation>
    </message>
    <message>
        <source>%1 hours before</source>
        <translation>%1 Stunden vorher</translation>
    </message>
    <message>
        <source>%1 minutes before</source>
        <translation>%1 Minuten vorher</translation>
    </message>
    <message>
        <source>%1 ms less</source>
        <translation>%1 ms weniger</translation>
    </message>
    <message>
        <source>%1 ms more</source>
        <translation>%1 ms mehr</translation>
    </message>
    <message>
        <source>%1 of glue, screw or plug</source>
        <translation>%1 Kleber, Schraube oder Stopfen</translation>
    </message>
    <message>
        <source>%1 over all</source>
        <translation>%1 insgesamt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 deep from the sawn %3</source>
        <translation>%1 bis %2 tief von der gesägten %3</translation>
    </message>
    <message>
        <source>%1 values were not given and are the program&apos;s usual ones; the more of them you weigh and measure, the better the figures.</source>
        <translation>%1 Werte waren nicht angegeben und sind die üblichen des Programms; je mehr davon du wiegst und misst, desto besser die Zahlen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, rampwright %3</source>
        <translation>%1, %2, rampwright %3</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message>
        <source>%1, no. %2</source>
        <translation>%1, Nr. %2</translation>
    </message>
    <message>
        <source>%1: not among your bits</source>
        <translation>%1: nicht unter deinen Bohrern</translation>
    </message>
    <message>
        <source>(hour not given)</source>
        <translation>(Uhrzeit nicht angegeben)</translation>
    </message>
    <message>
        <source>, part %1 of %2</source>
        <translation>, Teil %1 von %2</translation>
    </message>
    <message>
        <source>, turned %1</source>
        <translation>, gedreht %1</translation>
    </message>
    <message>
        <source>; %1 %2 of wood stays beyond</source>
        <translation>; dahinter bleiben %1 %2 Holz</translation>
    </message>
    <message>
        <source>; %1 from the block&apos;s own face</source>
        <translation>; %1 von der eigenen Fläche des Klotzes</translation>
    </message>
    <message>
        <source>; slanted: the figures are those of the box around it</source>
        <translation>; schräg: die Zahlen gelten für den Quader darum</translation>
    </message>
    <message>
        <source>; the drill&apos;s point goes %1 deeper</source>
        <translation>; die Bohrerspitze geht %1 tiefer</translation>
    </message>
    <message>
        <source>A pinch of dry powder into each bore, over paper; spin; wipe off what is loose.</source>
        <translation>Eine Prise Trockenpulver in jede Bohrung, über Papier; drehen; Loses abwischen.</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Erwachsener</translation>
    </message>
    <message>
        <source>After every change: push each wheel to its gap again, spin it, roll the car three times.</source>
        <translation>Nach jeder Änderung: jedes Rad wieder auf seinen Spalt schieben, drehen, den Wagen dreimal rollen.</translation>
    </message>
    <message>
        <source>Aim on the drift board</source>
        <translation>Auf dem Rollbrett ausrichten</translation>
    </message>
    <message>
        <source>All parts</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>An adult does the cutting, drilling and everything hot, and decides together with the local rules. Work with eye protection on, the wood clamped, in fresh air.</source>
        <translation>Ein Erwachsener sägt, bohrt und macht alles Heiße, und entscheidet zusammen mit den örtlichen Regeln. Arbeite mit Schutzbrille, das Holz eingespannt, an frischer Luft.</translation>
    </message>
    <message>
        <source>Ask first which lubricants the local rules allow.</source>
        <translation>Frag zuerst, welche Schmiermittel die örtlichen Regeln erlauben.</translation>
    </message>
    <message>
        <source>At the weigh-in</source>
        <translation>Beim Wiegen vor dem Rennen</translation>
    </message>
    <message>
        <source>Axle holes</source>
        <translation>Achslöcher</translation>
    </message>
    <message>
        <source>Axle holes drilled, shape sawn, pockets cut</source>
        <translation>Achslöcher gebohrt, Form gesägt, Taschen geschnitten</translation>
    </message>
    <message>
        <source>Axles polished, wheels sorted</source>
        <translation>Achsen poliert, Räder sortiert</translation>
    </message>
    <message>
        <source>Back from the race</source>
        <translation>Vom Rennen zurück</translation>
    </message>
    <message>
        <source>Balance point ahead of the rear axle</source>
        <translation>Schwerpunkt vor der Hinterachse</translation>
    </message>
    <message>
        <source>Ballast map</source>
        <translation>Ballastplan</translation>
    </message>
    <message>
        <source>Block shape, axle holes square, wheels that spin freely, weight just under the limit and well to the rear, and a dry lubricant: that is most of the speed. Paint, polish to a mirror, and round edges can wait for the next car. Never leave out clamps, eye protection or the weighing.</source>
        <translation>Form des Klotzes, Achslöcher rechtwinklig, Räder, die frei drehen, Gewicht knapp unter der Grenze und weit hinten, und ein trockenes Schmiermittel: das ist das meiste der Geschwindigkeit. Farbe, Spiegelpolitur und runde Kanten können auf den nächsten Wagen warten. Lass nie Zwingen, Schutzbrille oder das Wiegen weg.</translation>
    </message>
    <message>
        <source>Block weighed, templates glued on, tools and weights in the house</source>
        <translation>Klotz gewogen, Schablonen aufgeklebt, Werkzeug und Gewichte im Haus</translation>
    </message>
    <message>
        <source>Bore, %1</source>
        <translation>Bohrung, %1</translation>
    </message>
    <message>
        <source>Breaks a rule</source>
        <translation>Bricht eine Regel</translation>
    </message>
    <message>
        <source>Bring along</source>
        <translation>Mitbringen</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Bauplan</translation>
    </message>
    <message>
        <source>Build sheet: %1</source>
        <translation>Bauplan: %1</translation>
    </message>
    <message>
        <source>Build sheet: %1, %2</source>
        <translation>Bauplan: %1, %2</translation>
    </message>
    <message>
        <source>Built against planned, and what to do</source>
        <translation>Gebaut gegen geplant, und was zu tun ist</translation>
    </message>
    <message>
        <source>Built so far</source>
        <translation>So weit gebaut</translation>
    </message>
    <message>
        <source>C</source>
        <comment>name of the locale that days and months are written in</comment>
        <translation>de_DE</translation>
    </message>
    <message>
        <source>Cant</source>
        <translation>Sturz</translation>
    </message>
    <message>
        <source>Cant found</source>
        <translation>Sturz gefunden</translation>
    </message>
    <message>
        <source>Cant is positive where the axle&apos;s outer end is higher. Steer is where the wheel heads, seen from the driver&apos;s seat.</source>
        <translation>Sturz ist positiv, wo das äußere Ende der Achse höher ist. Spur ist, wohin das Rad läuft, vom Fahrersitz gesehen.</translation>
    </message>
    <message>
        <source>Care: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>Change the steer of the touching front wheel a little at a time, by turning a bent axle in its hole or by the angle of the hole, never of both wheels at once.</source>
        <translation>Ändere die Spur des aufsetzenden Vorderrads in kleinen Schritten, durch Drehen einer gebogenen Achse im Loch oder durch den Winkel des Lochs, nie an beiden Rädern zugleich.</translation>
    </message>
    <message>
        <source>Check before you cut. Print at 100 % (“actual size”), never “fit to page”. Lay a ruler along both bars, from the outer edge of the black to the outer edge of the last field: 100 mm and 4 in. If a bar is off by more than half a millimetre, measure the 100 mm bar as printed and print again with what it measures.</source>
        <translation>Prüf, bevor du schneidest. Druck mit 100 % („tatsächliche Größe“), nie „an Seite anpassen“. Leg ein Lineal an beide Balken, von der Außenkante des Schwarzen bis zur Außenkante des letzten Felds: 100 mm und 4 in. Weicht ein Balken um mehr als einen halben Millimeter ab, miss den gedruckten 100-mm-Balken und druck noch einmal mit diesem Maß.</translation>
    </message>
    <message>
        <source>Child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>Counted back from the race, %1 %2. What lies past already: look at the right-hand column.</source>
        <translation>Zurückgezählt vom Rennen, %1 %2. Was schon vorbei ist: sieh in die rechte Spalte.</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschnitt</translation>
    </message>
    <message>
        <source>Cut along the dashed line, lay it on the next part so that the rings with the same letter cover each other, and glue.</source>
        <translation>Schneid entlang der gestrichelten Linie, leg sie auf den nächsten Teil, sodass sich die Ringe mit gleichem Buchstaben decken, und kleb sie zusammen.</translation>
    </message>
    <message>
        <source>Depth, %1</source>
        <translation>Tiefe, %1</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Erledigt bis</translation>
    </message>
    <message>
        <source>Drawn at %1 of true size, first-angle projection: the top view stands below the side view. The quartered circle is the balance point.</source>
        <translation>Gezeichnet in %1 der wahren Größe, Projektionsmethode 1: die Draufsicht steht unter der Seitenansicht. Der geviertelte Kreis ist der Schwerpunkt.</translation>
    </message>
    <message>
        <source>Drawn at %1 of true size: read the numbers here, cut from the templates.</source>
        <translation>Gezeichnet in %1 der wahren Größe: lies hier die Zahlen, schneide nach den Schablonen.</translation>
    </message>
    <message>
        <source>Drift board</source>
        <translation>Rollbrett</translation>
    </message>
    <message>
        <source>Drift read, %1</source>
        <translation>Abgelesene Abdrift, %1</translation>
    </message>
    <message>
        <source>Drill and chisel by the map, the block clamped between scraps.</source>
        <translation>Bohr und stemm nach dem Plan, den Klotz zwischen Reststücken eingespannt.</translation>
    </message>
    <message>
        <source>Drill and pocket map</source>
        <translation>Bohr- und Taschenplan</translation>
    </message>
    <message>
        <source>Drill bits wander and saws take %1 of wood: stay on the waste side. Drill tolerance of your tools: %2, saw: %3.</source>
        <translation>Bohrer verlaufen, und Sägen nehmen %1 Holz: bleib auf der Abfallseite. Toleranz deiner Werkzeuge beim Bohren: %2, beim Sägen: %3.</translation>
    </message>
    <message>
        <source>Drill the axle holes in a jig, from both sides, while the block is square.</source>
        <translation>Bohr die Achslöcher in einer Lehre, von beiden Seiten, solange der Klotz rechteckig ist.</translation>
    </message>
    <message>
        <source>Drill the axle holes on a drill press, while the block is square.</source>
        <translation>Bohr die Achslöcher in der Ständerbohrmaschine, solange der Klotz rechteckig ist.</translation>
    </message>
    <message>
        <source>Dry fit and weigh</source>
        <translation>Trocken zusammenstecken und wiegen</translation>
    </message>
    <message>
        <source>Each figure is rounded by itself, so a sum can differ from its parts by the last digit.</source>
        <translation>Jede Zahl ist für sich gerundet, darum kann eine Summe in der letzten Stelle von ihren Teilen abweichen.</translation>
    </message>
    <message>
        <source>Every distance is from an outer face of the block as it comes from the yard: the tail end, the right side, the bottom. Mark with a ruler before those faces are sawn away. Numbers on the drawing are %1.</source>
        <translation>Jeder Abstand gilt von einer Außenfläche des Klotzes, wie er vom Händler kommt: vom Heck, von der rechten Seite, von unten. Zeichne mit dem Lineal an, bevor diese Flächen weggesägt sind. Zahlen in der Zeichnung sind %1.</translation>
    </message>
    <message>
        <source>Every wheel spins; gaps as planned; axle heads in the place of their pencil marks</source>
        <translation>Jedes Rad dreht; Spalte wie geplant; Achsköpfe an ihren Bleistiftmarken</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Expected figures</source>
        <translation>Erwartete Zahlen</translation>
    </message>
    <message>
        <source>Expected: %1; 19 heats of 20 between %2 and %3.</source>
        <translation>Erwartet: %1; 19 von 20 Läufen zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>F</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>First coat of paint on</source>
        <translation>Erste Schicht Farbe drauf</translation>
    </message>
    <message>
        <source>First heat</source>
        <translation>Erster Lauf</translation>
    </message>
    <message>
        <source>Fit the wheels</source>
        <translation>Räder einbauen</translation>
    </message>
    <message>
        <source>Fix each weight as the ballast map says; let it set before the car is moved.</source>
        <translation>Befestige jedes Gewicht, wie es der Ballastplan sagt; lass es aushärten, bevor der Wagen bewegt wird.</translation>
    </message>
    <message>
        <source>Fix the weights</source>
        <translation>Gewichte befestigen</translation>
    </message>
    <message>
        <source>For every step: who does it, and what can hurt. A ticked box is a step that the project already says is done.</source>
        <translation>Zu jedem Schritt: wer ihn macht, und was wehtun kann. Ein angekreuztes Kästchen ist ein Schritt, von dem das Projekt schon sagt, er sei getan.</translation>
    </message>
    <message>
        <source>From bottom, %1</source>
        <translation>Von unten, %1</translation>
    </message>
    <message>
        <source>From right side, %1</source>
        <translation>Von rechts, %1</translation>
    </message>
    <message>
        <source>From tail, %1</source>
        <translation>Vom Heck, %1</translation>
    </message>
    <message>
        <source>From the bottom, %1</source>
        <translation>Von unten, %1</translation>
    </message>
    <message>
        <source>From the right side, %1</source>
        <translation>Von der rechten Seite, %1</translation>
    </message>
    <message>
        <source>From the tail, %1</source>
        <translation>Vom Heck, %1</translation>
    </message>
    <message>
        <source>Front view</source>
        <translation>Vorderansicht</translation>
    </message>
    <message>
        <source>Front weight with one kitchen scale: front wheels on the scale, rear wheels on a block of the same height; read three times, lifting the car off in between.</source>
        <translation>Vorderachslast mit einer Küchenwaage: Vorderräder auf die Waage, Hinterräder auf einen gleich hohen Klotz; dreimal ablesen, den Wagen dazwischen abheben.</translation>
    </message>
    <message>
        <source>Gap to body, %1</source>
        <translation>Spalt zum Körper, %1</translation>
    </message>
    <message>
        <source>Go through the inspection list with a ruler, as the inspector will.</source>
        <translation>Geh die Abnahmeliste mit einem Lineal durch, wie der Prüfer es tun wird.</translation>
    </message>
    <message>
        <source>Greatest weight allowed: %1.</source>
        <translation>Größtes erlaubtes Gewicht: %1.</translation>
    </message>
    <message>
        <source>Guidance margin %1: above 1 the front is heavy and steered enough to hold the rail against bumps. Chance that it rides the rail all the way: %2.</source>
        <translation>Führungsreserve %1: über 1 ist es vorn schwer genug und die Spur groß genug, um gegen Stöße an der Schiene zu bleiben. Chance, dass er den ganzen Weg an der Schiene läuft: %2.</translation>
    </message>
    <message>
        <source>Hand over the pieces in the order of the ballast map; tick them there.</source>
        <translation>Reich die Stücke in der Reihenfolge des Ballastplans an; hak sie dort ab.</translation>
    </message>
    <message>
        <source>Handle the lead.</source>
        <translation>Das Blei anfassen.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Heats</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Gehalten von</translation>
    </message>
    <message>
        <source>How to use this sheet</source>
        <translation>Wie man diesen Plan benutzt</translation>
    </message>
    <message>
        <source>If this grows</source>
        <translation>Wenn dies wächst</translation>
    </message>
    <message>
        <source>If time is short, leave out</source>
        <translation>Wenn die Zeit knapp ist, lass weg</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Drin</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Inspection list</source>
        <translation>Abnahmeliste</translation>
    </message>
    <message>
        <source>Keep the offcuts: they hold the car level later on.</source>
        <translation>Heb die Reststücke auf: sie halten den Wagen später waagerecht.</translation>
    </message>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Last coat of paint on: paint stays soft for a day</source>
        <translation>Letzte Schicht Farbe drauf: Farbe bleibt einen Tag weich</translation>
    </message>
    <message>
        <source>Lay all parts on the scale together, with paint and glue still to come; compare with the weight schedule.</source>
        <translation>Leg alle Teile zusammen auf die Waage, Farbe und Kleber kommen noch; vergleich mit der Gewichtsliste.</translation>
    </message>
    <message>
        <source>Level the board both ways with a spirit level; draw a line along it and a cross line at %1.</source>
        <translation>Richte das Brett mit der Wasserwaage in beiden Richtungen aus; zieh eine Linie entlang und eine Querlinie bei %1.</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Local rules and the adult in charge decide.</source>
        <translation>Die örtlichen Regeln und der zuständige Erwachsene entscheiden.</translation>
    </message>
    <message>
        <source>Look once more that bottom and tail edges lie on the block&apos;s edges.</source>
        <translation>Sieh noch einmal nach, ob Unter- und Heckkante auf den Kanten des Klotzes liegen.</translation>
    </message>
    <message>
        <source>Lubricate</source>
        <translation>Schmieren</translation>
    </message>
    <message>
        <source>Lubricate each wheel over paper, spin, wipe off (child, with an adult by)</source>
        <translation>Jedes Rad über Papier schmieren, drehen, abwischen (Kind, ein Erwachsener dabei)</translation>
    </message>
    <message>
        <source>Lubricated, weighed once more, spare parts packed</source>
        <translation>Geschmiert, noch einmal gewogen, Ersatzteile eingepackt</translation>
    </message>
    <message>
        <source>Made from %1 on %2.</source>
        <translation>Erstellt aus %1 am %2.</translation>
    </message>
    <message>
        <source>Mark every depth on the bit with tape, by the drill and pocket map; try each weight in its place.</source>
        <translation>Zeichne jede Tiefe mit Klebeband am Bohrer an, nach dem Bohr- und Taschenplan; probier jedes Gewicht an seinem Platz.</translation>
    </message>
    <message>
        <source>Mark the middles with a nail&apos;s point through the template.</source>
        <translation>Stich die Mitten mit einer Nagelspitze durch die Schablone an.</translation>
    </message>
    <message>
        <source>Measure the two bars on the template page, cut the templates out with scissors, glue them on the block: side template on the right side, top template on the top.</source>
        <translation>Miss die beiden Balken auf der Schablonenseite, schneid die Schablonen mit der Schere aus, kleb sie auf den Klotz: die seitliche auf die rechte Seite, die obere auf die Oberseite.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured on the finished car</source>
        <translation>Gemessen am fertigen Wagen</translation>
    </message>
    <message>
        <source>Mix and spray, outdoors.</source>
        <translation>Mischen und sprühen, im Freien.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Nose touches the starting pin squarely, nothing hangs below the body</source>
        <translation>Die Nase liegt gerade am Startstift an, unter dem Körper hängt nichts</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Notes of the project</source>
        <translation>Notizen des Projekts</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>On the track</source>
        <translation>Auf der Bahn</translation>
    </message>
    <message>
        <source>One division of the scale, %1, is added, so that the next reading is surely lower. Putty first: it is off in seconds, and taken off near the balance point it leaves the balance alone. Holes are the adult&apos;s, with the car clamped. Too light by more than a division: press a ball of it on, as far back as the rules allow.</source>
        <translation>Ein Schritt der Waage, %1, ist dazugezählt, damit die nächste Ablesung sicher niedriger ist. Zuerst Knete: sie ist in Sekunden ab, und nahe am Schwerpunkt abgenommen lässt sie ihn, wo er ist. Löcher macht der Erwachsene, der Wagen ist dabei eingespannt. Um mehr als einen Schritt zu leicht: drück eine Kugel Knete an, so weit hinten, wie die Regeln erlauben.</translation>
    </message>
    <message>
        <source>Over the limit by</source>
        <translation>Über der Grenze um</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Lackieren</translation>
    </message>
    <message>
        <source>Paint: %1.</source>
        <translation>Farbe: %1.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Pockets and bores</source>
        <translation>Taschen und Bohrungen</translation>
    </message>
    <message>
        <source>Polish the axles with finer and finer paper, wet; spin every wheel and keep the straightest ones for the rear and the touching front.</source>
        <translation>Polier die Achsen mit immer feinerem Papier, nass; dreh jedes Rad und behalt die geradesten für hinten und das aufsetzende Vorderrad.</translation>
    </message>
    <message>
        <source>Predictions of a model with stated uncertainties, for %1. ± is one standard uncertainty: about two heats of three lie within it.</source>
        <translation>Vorhersagen eines Modells mit genannten Unsicherheiten, für %1. ± ist eine Standardunsicherheit: etwa zwei von drei Läufen liegen darin.</translation>
    </message>
    <message>
        <source>Print and check the templates</source>
        <translation>Schablonen drucken und prüfen</translation>
    </message>
    <message>
        <source>Print it at 100 % (“actual size”). On the template page, measure the two bars before you cut anything. Work through the steps in order and tick their boxes; every step says who does it. Write what you measure into the blanks: typed back into the project, it makes the next sheet better.</source>
        <translation>Druck ihn mit 100 % („tatsächliche Größe“). Miss auf der Schablonenseite die beiden Balken, bevor du etwas schneidest. Arbeite die Schritte der Reihe nach ab und hak ihre Kästchen ab; bei jedem Schritt steht, wer ihn macht. Schreib in die Lücken, was du misst: zurück ins Projekt getippt, macht es den nächsten Plan besser.</translation>
    </message>
    <message>
        <source>Push the axles in straight, to the cant and steer of the wheel page.</source>
        <translation>Drück die Achsen gerade ein, mit Sturz und Spur der Radseite.</translation>
    </message>
    <message>
        <source>R</source>
        <translation>H</translation>
    </message>
    <message>
        <source>Race-night card</source>
        <translation>Karte für den Rennabend</translation>
    </message>
    <message>
        <source>Race: %1 %2.</source>
        <translation>Rennen: %1 %2.</translation>
    </message>
    <message>
        <source>Roll the car and read the drift, as on the wheel page.</source>
        <translation>Lass den Wagen rollen und lies die Abdrift ab, wie auf der Radseite.</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Rule, and how it is looked at</source>
        <translation>Regel, und wie sie geprüft wird</translation>
    </message>
    <message>
        <source>Rulers in inches, from the tail</source>
        <translation>Lineale in Zoll, vom Heck</translation>
    </message>
    <message>
        <source>Rulers in mm, from the tail</source>
        <translation>Lineale in mm, vom Heck</translation>
    </message>
    <message>
        <source>Rules: %1. Source: %2. %3</source>
        <translation>Regeln: %1. Quelle: %2. %3</translation>
    </message>
    <message>
        <source>Running total, %1</source>
        <translation>Laufende Summe, %1</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <source>Sand to the line, edges rounded to %1.</source>
        <translation>Schleif bis zur Linie, Kanten auf %1 gerundet.</translation>
    </message>
    <message>
        <source>Sand to the line; break the edges a little.</source>
        <translation>Schleif bis zur Linie; brich die Kanten ein wenig.</translation>
    </message>
    <message>
        <source>Sand with the first, coarse paper; the child goes on with the fine ones.</source>
        <translation>Schleif mit dem ersten, groben Papier; das Kind macht mit den feinen weiter.</translation>
    </message>
    <message>
        <source>Sanded</source>
        <translation>Geschliffen</translation>
    </message>
    <message>
        <source>Saw on the outside of the line, in what falls away.</source>
        <translation>Säg an der Außenseite der Linie, im Abfall.</translation>
    </message>
    <message>
        <source>Saw on the outside of the line, in what falls away: the blade takes %1.</source>
        <translation>Säg an der Außenseite der Linie, im Abfall: das Blatt nimmt %1.</translation>
    </message>
    <message>
        <source>Saw on the outside of the line: the blade takes %1.</source>
        <translation>Säg an der Außenseite der Linie: das Blatt nimmt %1.</translation>
    </message>
    <message>
        <source>Saw the axle slots from the bottom, square across, while the block is square.</source>
        <translation>Säg die Achsschlitze von unten, rechtwinklig quer, solange der Klotz rechteckig ist.</translation>
    </message>
    <message>
        <source>Saw the side shape</source>
        <translation>Seitenform sägen</translation>
    </message>
    <message>
        <source>Saw the top shape</source>
        <translation>Form von oben sägen</translation>
    </message>
    <message>
        <source>Scale %1 : 1</source>
        <translation>Maßstab %1 : 1</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweite</translation>
    </message>
    <message>
        <source>Seen from above, nose to the right: glue it on the block&apos;s top face, tail edges and middle lines together.</source>
        <translation>Von oben gesehen, Nase nach rechts: kleb sie auf die Oberseite des Klotzes, Heckkanten und Mittellinien zusammen.</translation>
    </message>
    <message>
        <source>Seen from the right, nose to the right: glue it on the block&apos;s right side, bottom and tail edges together.</source>
        <translation>Von rechts gesehen, Nase nach rechts: kleb sie auf die rechte Seite des Klotzes, Unter- und Heckkante zusammen.</translation>
    </message>
    <message>
        <source>Seen so far: %1 %2 over %3.</source>
        <translation>Bisher gesehen: %1 %2 über %3.</translation>
    </message>
    <message>
        <source>Set each gap with a card; see that every wheel spins freely.</source>
        <translation>Stell jeden Spalt mit einer Karte ein; sieh nach, ob jedes Rad frei dreht.</translation>
    </message>
    <message>
        <source>Side template, true size</source>
        <translation>Seitliche Schablone, wahre Größe</translation>
    </message>
    <message>
        <source>Side view</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>Side view, from the right</source>
        <translation>Seitenansicht, von rechts</translation>
    </message>
    <message>
        <source>Start the car straight along the line, three times the same way; read the drift at the rear axle and take the middle one.</source>
        <translation>Lass den Wagen gerade entlang der Linie los, dreimal gleich; lies die Abdrift an der Hinterachse ab und nimm den mittleren Wert.</translation>
    </message>
    <message>
        <source>Steer</source>
        <translation>Spur</translation>
    </message>
    <message>
        <source>Steer found</source>
        <translation>Spur gefunden</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Stop within a tenth of the target. Mark the axle heads with a pencil, so that a turned one shows.</source>
        <translation>Hör innerhalb eines Zehntels des Ziels auf. Zeichne die Achsköpfe mit Bleistift an, damit man sieht, wenn sich einer dreht.</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Nimm ab</translation>
    </message>
    <message>
        <source>Tape the offcuts back on for the next cuts.</source>
        <translation>Kleb die Reststücke für die nächsten Schnitte mit Klebeband wieder an.</translation>
    </message>
    <message>
        <source>Target: over %1 of level board the rear axle drifts %2 %3 (steer %4 %3 at the touching front wheel).</source>
        <translation>Ziel: über %1 ebenes Brett driftet die Hinterachse um %2 %3 ab (Spur %4 %3 am aufsetzenden Vorderrad).</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Schablonen</translation>
    </message>
    <message>
        <source>The car should weigh %1.</source>
        <translation>Der Wagen sollte %1 wiegen.</translation>
    </message>
    <message>
        <source>The guide wheel&apos;s axle, seen from its head:</source>
        <translation>Die Achse des führenden Rads, vom Kopf aus gesehen:</translation>
    </message>
    <message>
        <source>The holes: ⌀ %1, %2 deep, where there is wood.</source>
        <translation>Die Löcher: ⌀ %1, %2 tief, wo Holz ist.</translation>
    </message>
    <message>
        <source>The numbers are the order of fitting. Places are those of each weight&apos;s middle, from the block&apos;s tail end, right side and bottom. The quartered circle is the car&apos;s balance point: %1 ahead of the rear axle.</source>
        <translation>Die Nummern sind die Reihenfolge des Einbaus. Die Orte gelten für die Mitte jedes Gewichts, vom Heck, von der rechten Seite und der Unterseite des Klotzes. Der geviertelte Kreis ist der Schwerpunkt des Wagens: %1 vor der Hinterachse.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>The project does not say when the race is: with its date and hour, this page shows a calendar.</source>
        <translation>Das Projekt sagt nicht, wann das Rennen ist: mit Datum und Uhrzeit zeigt diese Seite einen Kalender.</translation>
    </message>
    <message>
        <source>The project states no rules: ask for the local ones.</source>
        <translation>Das Projekt nennt keine Regeln: frag nach den örtlichen.</translation>
    </message>
    <message>
        <source>The scale should read %1. Limit %2.</source>
        <translation>Die Waage sollte %1 zeigen. Grenze %2.</translation>
    </message>
    <message>
        <source>The times are common practice; what the paint&apos;s and the glue&apos;s packet says goes first.</source>
        <translation>Die Zeiten sind übliche Praxis; was auf der Packung von Farbe und Kleber steht, geht vor.</translation>
    </message>
    <message>
        <source>Third</source>
        <translation>Dritte</translation>
    </message>
    <message>
        <source>This axle is bent by %1. Turned from straight up by %2 now; five degrees more of turn change the steer by %3.</source>
        <translation>Diese Achse ist um %1 gebogen. Von senkrecht nach oben ist sie jetzt um %2 gedreht; fünf Grad mehr Drehung ändern die Spur um %3.</translation>
    </message>
    <message>
        <source>This bar is 100 mm long</source>
        <translation>Dieser Balken ist 100 mm lang</translation>
    </message>
    <message>
        <source>This bar is 4 in long</source>
        <translation>Dieser Balken ist 4 in lang</translation>
    </message>
    <message>
        <source>This lane has no guide rail: the target is no drift at all over %1.</source>
        <translation>Diese Bahn hat keine Führungsschiene: das Ziel ist gar keine Abdrift über %1.</translation>
    </message>
    <message>
        <source>This plan has no weights.</source>
        <translation>Dieser Plan hat keine Gewichte.</translation>
    </message>
    <message>
        <source>This print makes up for a printer whose 100 mm bar came out at %1 mm: templates and bars are drawn %2 times their size, to be printed with the same setting as then.</source>
        <translation>Dieser Druck gleicht einen Drucker aus, dessen 100-mm-Balken %1 mm lang herauskam: Schablonen und Balken sind %2-mal so groß gezeichnet, mit derselben Einstellung zu drucken wie damals.</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>To set a gap, push the wheel in against a card as thick as the gap, and draw the card out. The wheel must spin freely and have a little play along the axle.</source>
        <translation>Um einen Spalt einzustellen, drück das Rad gegen eine Karte, so dick wie der Spalt, und zieh die Karte heraus. Das Rad muss frei drehen und etwas Spiel entlang der Achse haben.</translation>
    </message>
    <message>
        <source>Tonight only?</source>
        <translation>Nur heute Abend?</translation>
    </message>
    <message>
        <source>Too heavy on the official scale?</source>
        <translation>Zu schwer auf der offiziellen Waage?</translation>
    </message>
    <message>
        <source>Top template, true size</source>
        <translation>Obere Schablone, wahre Größe</translation>
    </message>
    <message>
        <source>Top view</source>
        <translation>Draufsicht</translation>
    </message>
    <message>
        <source>Tuning</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Turn the axle between rolls.</source>
        <translation>Dreh die Achse zwischen den Rollversuchen.</translation>
    </message>
    <message>
        <source>Turn the axles in a drill, clamped, while they are polished; file burrs off under the heads.</source>
        <translation>Dreh die Achsen eingespannt in der Bohrmaschine, während sie poliert werden; feil Grate unter den Köpfen weg.</translation>
    </message>
    <message>
        <source>Turn the board end for end and do it again: half of the difference is the car, half of the sum is the board.</source>
        <translation>Dreh das Brett um und mach es noch einmal: die halbe Differenz ist der Wagen, die halbe Summe das Brett.</translation>
    </message>
    <message>
        <source>Type these into the project: the next sheet then shows the car as it was built.</source>
        <translation>Tipp das ins Projekt: der nächste Plan zeigt dann den Wagen, wie er gebaut ist.</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Weigh and measure the block</source>
        <translation>Klotz wiegen und messen</translation>
    </message>
    <message>
        <source>Weigh and trim</source>
        <translation>Wiegen und trimmen</translation>
    </message>
    <message>
        <source>Weigh at home, on the same scale as before, once more before leaving</source>
        <translation>Zu Hause wiegen, auf derselben Waage wie vorher, noch einmal vor dem Losfahren</translation>
    </message>
    <message>
        <source>Weigh at the hall; trim as below; weigh again; then no more changes</source>
        <translation>In der Halle wiegen; nach unten stehender Liste trimmen; wieder wiegen; dann nichts mehr ändern</translation>
    </message>
    <message>
        <source>Weigh each piece before it goes in, and write down what the scale says: what was measured wins over what was planned.</source>
        <translation>Wieg jedes Stück, bevor es hineinkommt, und schreib auf, was die Waage zeigt: Gemessenes gilt vor Geplantem.</translation>
    </message>
    <message>
        <source>Weigh the block, measure length, width and height (planned: %1 × %2 × %3), and type them into the project: the balance shifts with the wood.</source>
        <translation>Wieg den Klotz, miss Länge, Breite und Höhe (geplant: %1 × %2 × %3) und tipp sie ins Projekt: der Schwerpunkt wandert mit dem Holz.</translation>
    </message>
    <message>
        <source>Weigh the finished car three times, write all three down, and trim by the race-night card.</source>
        <translation>Wieg den fertigen Wagen dreimal, schreib alle drei Werte auf und trimm nach der Karte für den Rennabend.</translation>
    </message>
    <message>
        <source>Weighed as built: %1. The figures on this sheet go by that.</source>
        <translation>Gebaut gewogen: %1. Die Zahlen dieses Plans richten sich danach.</translation>
    </message>
    <message>
        <source>Weighed, %1</source>
        <translation>Gewogen, %1</translation>
    </message>
    <message>
        <source>Weighed, trimmed, gone through the inspection list</source>
        <translation>Gewogen, getrimmt, Abnahmeliste durchgegangen</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Weight of the car</source>
        <translation>Gewicht des Wagens</translation>
    </message>
    <message>
        <source>Weight schedule</source>
        <translation>Gewichtsliste</translation>
    </message>
    <message>
        <source>Weight under the front wheels, car level</source>
        <translation>Gewicht unter den Vorderrädern, Wagen waagerecht</translation>
    </message>
    <message>
        <source>Weights glued in: two-part glue is hard overnight, wood glue after a day</source>
        <translation>Gewichte eingeklebt: Zweikomponentenkleber ist über Nacht hart, Holzleim nach einem Tag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What changes the time most</source>
        <translation>Was die Zeit am meisten ändert</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Was zu erwarten ist</translation>
    </message>
    <message>
        <source>What we saw</source>
        <translation>Was wir sahen</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>Wheelbase %1. Axles: ⌀ %2, %3 long under the head, %4 each, into holes of ⌀ %5.</source>
        <translation>Radstand %1. Achsen: ⌀ %2, %3 lang unter dem Kopf, je %4, in Löchern von ⌀ %5.</translation>
    </message>
    <message>
        <source>Wheels and axles</source>
        <translation>Räder und Achsen</translation>
    </message>
    <message>
        <source>Wheels on, gaps set, drift board done</source>
        <translation>Räder drauf, Spalte eingestellt, Rollbrett erledigt</translation>
    </message>
    <message>
        <source>Wipe off the dust, paint thin coats, keep paint out of the axle holes. Planned: %1 of paint and decals.</source>
        <translation>Wisch den Staub ab, trag dünne Schichten auf, halt die Achslöcher frei von Farbe. Geplant: %1 Farbe und Abziehbilder.</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>a box with a soft floor</source>
        <translation>eine Schachtel mit weichem Boden</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>as a ball of %1, ⌀</source>
        <translation>als Kugel aus %1, ⌀</translation>
    </message>
    <message>
        <source>balance point, %1 from the tail</source>
        <translation>Schwerpunkt, %1 vom Heck</translation>
    </message>
    <message>
        <source>balances %1 ahead of it</source>
        <translation>balanciert %1 davor</translation>
    </message>
    <message>
        <source>ball ⌀ %1 %2</source>
        <translation>Kugel ⌀ %1 %2</translation>
    </message>
    <message>
        <source>block %1 × %2 × %3 %4</source>
        <translation>Quader %1 × %2 × %3 %4</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Unterseite</translation>
    </message>
    <message>
        <source>by</source>
        <translation>um</translation>
    </message>
    <message>
        <source>closed all round: no tool reaches it from outside</source>
        <translation>ringsum geschlossen: von außen kommt kein Werkzeug heran</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>ddd d MMM, HH:mm</source>
        <translation>ddd d. MMM, HH:mm</translation>
    </message>
    <message>
        <source>decals and a second coat</source>
        <translation>Abziehbilder und eine zweite Schicht</translation>
    </message>
    <message>
        <source>fast glue and goggles (adult)</source>
        <translation>Sekundenkleber und Schutzbrille (Erwachsener)</translation>
    </message>
    <message>
        <source>fills its cut from the floor up</source>
        <translation>füllt seinen Ausschnitt vom Grund auf</translation>
    </message>
    <message>
        <source>fine sanding: looks only</source>
        <translation>Feinschliff: nur fürs Aussehen</translation>
    </message>
    <message>
        <source>fine sandpaper, a rag</source>
        <translation>feines Schleifpapier, einen Lappen</translation>
    </message>
    <message>
        <source>from both sides, or right through</source>
        <translation>von beiden Seiten, oder ganz durch</translation>
    </message>
    <message>
        <source>front axle carries %1</source>
        <translation>Vorderachse trägt %1</translation>
    </message>
    <message>
        <source>front axle hole</source>
        <translation>Loch der Vorderachse</translation>
    </message>
    <message>
        <source>front axle, %1 from the tail</source>
        <translation>Vorderachse, %1 vom Heck</translation>
    </message>
    <message>
        <source>front axle: %1 on a balance</source>
        <translation>Vorderachse: %1 auf der Waage</translation>
    </message>
    <message>
        <source>glue or screw (not planned: weigh it)</source>
        <translation>Kleber oder Schraube (nicht geplant: wieg es)</translation>
    </message>
    <message>
        <source>glue: a screw or strong tape holds at once, where the rules allow it</source>
        <translation>Kleber: eine Schraube oder starkes Klebeband hält sofort, wo die Regeln es erlauben</translation>
    </message>
    <message>
        <source>holes with a stop set, then a chisel</source>
        <translation>Löcher mit Anschlag, dann ein Stechbeitel</translation>
    </message>
    <message>
        <source>holes with the %1 %2 bit, stop set; then a chisel</source>
        <translation>Löcher mit dem Bohrer %1 %2, mit Anschlag; dann ein Stechbeitel</translation>
    </message>
    <message>
        <source>if a wheel steers hard, set it straight and leave it</source>
        <translation>wenn sich ein Rad schwer einstellen lässt, stell es gerade und lass es</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linken Seite</translation>
    </message>
    <message>
        <source>lengthways</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>lubricant, a sheet of paper</source>
        <translation>Schmiermittel, ein Blatt Papier</translation>
    </message>
    <message>
        <source>middle at %1</source>
        <translation>Mitte bei %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>never the weighing</source>
        <translation>nie das Wiegen</translation>
    </message>
    <message>
        <source>no cut</source>
        <translation>kein Ausschnitt</translation>
    </message>
    <message>
        <source>nose end</source>
        <translation>Bugseite</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>nothing: start here</source>
        <translation>nichts: hier geht es los</translation>
    </message>
    <message>
        <source>or so many holes in the underside</source>
        <translation>oder so viele Löcher in der Unterseite</translation>
    </message>
    <message>
        <source>paint: a bare car rolls as well. Add its %1 as putty</source>
        <translation>Farbe: ein nackter Wagen rollt genauso gut. Gib ihre %1 als Knete dazu</translation>
    </message>
    <message>
        <source>pliers, a card for the gaps</source>
        <translation>eine Zange, eine Karte für die Spalte</translation>
    </message>
    <message>
        <source>pressed in, tape over it where allowed</source>
        <translation>eingedrückt, Klebeband darüber, wo erlaubt</translation>
    </message>
    <message>
        <source>raised %1</source>
        <translation>angehoben %1</translation>
    </message>
    <message>
        <source>rear axle</source>
        <translation>Hinterachse</translation>
    </message>
    <message>
        <source>rear axle hole</source>
        <translation>Loch der Hinterachse</translation>
    </message>
    <message>
        <source>rear axle, %1 from the tail</source>
        <translation>Hinterachse, %1 vom Heck</translation>
    </message>
    <message>
        <source>right across</source>
        <translation>quer durch</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechten Seite</translation>
    </message>
    <message>
        <source>right through, from the %1 (%2 %3)</source>
        <translation>ganz durch, von der %1 (%2 %3)</translation>
    </message>
    <message>
        <source>rod ⌀ %1 × %2 %3, %4</source>
        <translation>Stab ⌀ %1 × %2 %3, %4</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rollt</translation>
    </message>
    <message>
        <source>saw slot from the bottom up to it</source>
        <translation>Sägeschlitz von unten bis zu ihr hinauf</translation>
    </message>
    <message>
        <source>sheet %1 × %2, %3 %4 thick</source>
        <translation>Blech %1 × %2, %3 %4 dick</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>tail end</source>
        <translation>Heckseite</translation>
    </message>
    <message>
        <source>the heat takes</source>
        <translation>braucht der Lauf</translation>
    </message>
    <message>
        <source>the last, finest polish</source>
        <translation>die letzte, feinste Politur</translation>
    </message>
    <message>
        <source>the race</source>
        <translation>das Rennen</translation>
    </message>
    <message>
        <source>the thick line is where its bend points, the arrow the next turn.</source>
        <translation>die dicke Linie ist, wohin ihre Biegung zeigt, der Pfeil die nächste Drehung.</translation>
    </message>
    <message>
        <source>the top shape and round edges can stay as the block is</source>
        <translation>die Form von oben und runde Kanten können bleiben, wie der Klotz ist</translation>
    </message>
    <message>
        <source>this card, a pencil</source>
        <translation>diese Karte, einen Bleistift</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>nach links</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>nach rechts</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>tungsten putty</source>
        <translation>Wolframknete</translation>
    </message>
    <message>
        <source>tungsten putty, tape</source>
        <translation>Wolframknete, Klebeband</translation>
    </message>
    <message>
        <source>two spare wheels, two axles</source>
        <translation>zwei Ersatzräder, zwei Achsen</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>aufrecht</translation>
    </message>
    <message>
        <source>your scale and its test weight</source>
        <translation>deine Waage und ihr Prüfgewicht</translation>
    </message>
    <message>
        <source>⌀, %1</source>
        <translation>⌀, %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ShelfList</name>
    <message>
        <source>%1
%2 left</source>
        <translation>%1
%2 übrig</translation>
    </message>
    <message>
        <source>%1
none left</source>
        <translation>%1
keins übrig</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Drag a piece to the drawing, or click it and then click where it should lie. Over a pocket or a bore it goes into it. With the keyboard: choose a row and put it in the car.</source>
        <translation>Zieh ein Stück in die Zeichnung, oder klick es an und klick dann, wo es liegen soll. Über einer Tasche oder Bohrung kommt es hinein. Mit der Tastatur: wähl eine Zeile und leg sie in den Wagen.</translation>
    </message>
    <message>
        <source>Pieces on the shelf</source>
        <translation>Stücke im Regal</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Shortcuts</name>
    <message>
        <source>Arrow keys; with Shift ten steps, with Ctrl a fifth</source>
        <translation>Pfeiltasten; mit Umschalt zehn Schritte, mit Strg ein Fünftel</translation>
    </message>
    <message>
        <source>Drag straight</source>
        <translation>Gerade ziehen</translation>
    </message>
    <message>
        <source>Drag without the snap</source>
        <translation>Ohne Einrasten ziehen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Hold Ctrl</source>
        <translation>Strg halten</translation>
    </message>
    <message>
        <source>Hold Shift</source>
        <translation>Umschalt halten</translation>
    </message>
    <message>
        <source>Keyboard Shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Move what is chosen on the drawing</source>
        <translation>Gewähltes in der Zeichnung verschieben</translation>
    </message>
    <message>
        <source>Put back what is being dragged</source>
        <translation>Gezogenes zurücklegen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::SpinDownView</name>
    <message>
        <source>&amp;Put It on the Car</source>
        <translation>Auf den Wagen &amp;setzen</translation>
    </message>
    <message>
        <source>&amp;Take off what the air takes</source>
        <translation>Abz&amp;iehen, was die Luft nimmt</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Diameter of the hole the axle goes through.</source>
        <translation>Durchmesser des Lochs, durch das die Achse geht.</translation>
    </message>
    <message>
        <source>Inertia, mass and bore must be above zero</source>
        <translation>Trägheit, Masse und Bohrung müssen größer als null sein</translation>
    </message>
    <message>
        <source>Journal friction %1; the readings scatter by %2 %3 about the curve.</source>
        <translation>Lagerreibung %1; die Ablesungen streuen um %2 %3 um die Kurve.</translation>
    </message>
    <message>
        <source>Of the wheel about its axle: from the pendulum, or as the plan has it.</source>
        <translation>Des Rads um seine Achse: vom Pendel, oder wie der Plan sie hat.</translation>
    </message>
    <message>
        <source>One reading a line: seconds, then speed, with a space, a tab or a semicolon between. A first line of words is a heading.</source>
        <translation>Je Zeile eine Ablesung: Sekunden, dann Drehzahl, mit Leerzeichen, Tabulator oder Semikolon dazwischen. Eine erste Zeile aus Wörtern ist eine Überschrift.</translation>
    </message>
    <message>
        <source>Readings: time and speed, one pair a line</source>
        <translation>Ablesungen: Zeit und Drehzahl, je Zeile ein Paar</translation>
    </message>
    <message>
        <source>Set journal friction from the spin-down</source>
        <translation>Lagerreibung vom Auslauf setzen</translation>
    </message>
    <message>
        <source>Speeds in</source>
        <translation>Drehzahlen in</translation>
    </message>
    <message>
        <source>Spin a wheel on its own level axle and read its speed at several times while it slows: paste or type time and speed, one pair a line. Keep eyes and sleeves clear of whatever spins it up.</source>
        <translation>Dreh ein Rad auf seiner eigenen waagerechten Achse an und lies seine Drehzahl mehrmals ab, während es langsamer wird: füg Zeit und Drehzahl ein oder tipp sie, je Zeile ein Paar. Halt Augen und Ärmel von dem weg, was es antreibt.</translation>
    </message>
    <message>
        <source>Spin inertia</source>
        <translation>Drehträgheit</translation>
    </message>
    <message>
        <source>The air slows the wheel too. Taken off, what is left is the axle&apos;s friction alone.</source>
        <translation>Auch die Luft bremst das Rad. Ist das abgezogen, bleibt allein die Reibung der Achse.</translation>
    </message>
    <message>
        <source>The wheel alone, on a pocket scale.</source>
        <translation>Das Rad allein, auf einer Taschenwaage.</translation>
    </message>
    <message numerus="yes">
        <source>There are %n reading(s) so far</source>
        <translation>
            <numerusform>Bisher gibt es %n Ablesung</numerusform>
            <numerusform>Bisher gibt es %n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Unit of the speeds</source>
        <translation>Einheit der Drehzahlen</translation>
    </message>
    <message>
        <source>What the speeds are read in. A mark on the wheel filmed at a known rate gives turns a second.</source>
        <translation>Worin die Drehzahlen abgelesen sind. Eine Marke am Rad, mit bekannter Bildrate gefilmt, gibt Umdrehungen je Sekunde.</translation>
    </message>
    <message>
        <source>Wheel weighs</source>
        <translation>Rad wiegt</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>angepasst</translation>
    </message>
    <message>
        <source>radians a second</source>
        <translation>Radiant je Sekunde</translation>
    </message>
    <message>
        <source>read</source>
        <translation>abgelesen</translation>
    </message>
    <message>
        <source>seconds  speed
0  1900
2  1710
4  1525
…</source>
        <translation>Sekunden  Drehzahl
0  1900
2  1710
4  1525
…</translation>
    </message>
    <message>
        <source>speed, %1</source>
        <translation>Drehzahl, %1</translation>
    </message>
    <message>
        <source>time, s</source>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>turns a minute</source>
        <translation>Umdrehungen je Minute</translation>
    </message>
    <message>
        <source>turns a second</source>
        <translation>Umdrehungen je Sekunde</translation>
    </message>
    <message>
        <source>type or paste at least four</source>
        <translation>tipp mindestens vier oder füg sie ein</translation>
    </message>
    <message>
        <source>type what was measured</source>
        <translation>tipp, was gemessen wurde</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::SpreadPanel</name>
    <message>
        <source>%1 In %L2 of %L3 it stops before the finish.</source>
        <translation>%1 In %L2 von %L3 bleibt er vor dem Ziel stehen.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: 19 heats of 20 between %2 and %3.</source>
        <translation>%1: 19 von 20 Läufen zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>The mean of the draws is %1: what may go wrong weighs more than what may go right.</source>
        <translation>Das Mittel der Ziehungen ist %1: was schiefgehen kann, wiegt schwerer als was gut gehen kann.</translation>
    </message>
    <message>
        <source>The part of the spread that would go if this one value were known. Measure the top of the list first.</source>
        <translation>Der Teil der Streuung, der verschwände, wenn dieser eine Wert bekannt wäre. Miss zuerst, was oben steht.</translation>
    </message>
    <message>
        <source>What it is unsure of</source>
        <translation>Worin sie unsicher ist</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::SteerCurvesView</name>
    <message>
        <source>Best is about %1 of steer towards the rail, %2 of drift over %3. Anything between %4 and %5 of drift costs less than 1 ms. A reduced model: its friction and bump values are to be fitted to your lane.</source>
        <translation>Am besten ist etwa %1 Spur zur Schiene hin, %2 Abdrift über %3. Alles zwischen %4 und %5 Abdrift kostet weniger als 1 ms. Ein vereinfachtes Modell: seine Werte für Reibung und Stöße sind an deine Bahn anzupassen.</translation>
    </message>
    <message>
        <source>Moving all the ballast together: best is about %1 on the front wheels, today it is %2. Between %3 and %4 the difference is less than 1 ms.</source>
        <translation>Allen Ballast zusammen verschoben: am besten sind etwa %1 auf den Vorderrädern, heute sind es %2. Zwischen %3 und %4 ist der Unterschied kleiner als 1 ms.</translation>
    </message>
    <message>
        <source>front load</source>
        <translation>Vorderachslast</translation>
    </message>
    <message>
        <source>steer towards the rail</source>
        <translation>Spur zur Schiene hin</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::StepButton</name>
    <message>
        <source>decided</source>
        <translation>entschieden</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::StepNote</name>
    <message>
        <source>Agree</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Richten</translation>
    </message>
    <message>
        <source>Decided: the block was weighed.</source>
        <translation>Entschieden: der Klotz wurde gewogen.</translation>
    </message>
    <message>
        <source>Decided: the car&apos;s balance was measured.</source>
        <translation>Entschieden: der Schwerpunkt des Wagens wurde gemessen.</translation>
    </message>
    <message>
        <source>Decided: the drift was measured on a board.</source>
        <translation>Entschieden: die Abdrift wurde auf einem Brett gemessen.</translation>
    </message>
    <message>
        <source>Decided: the finished car was weighed.</source>
        <translation>Entschieden: der fertige Wagen wurde gewogen.</translation>
    </message>
    <message>
        <source>Decided: the lane was measured, or this car was timed on it.</source>
        <translation>Entschieden: die Bahn wurde gemessen, oder dieser Wagen wurde auf ihr gestoppt.</translation>
    </message>
    <message>
        <source>Decided: the wheels&apos; spin was measured.</source>
        <translation>Entschieden: die Drehung der Räder wurde gemessen.</translation>
    </message>
    <message>
        <source>Decided: you said so.</source>
        <translation>Entschieden: du hast es gesagt.</translation>
    </message>
    <message>
        <source>Every step is decided.</source>
        <translation>Jeder Schritt ist entschieden.</translation>
    </message>
    <message>
        <source>I have decided this step</source>
        <translation>Diesen Schritt habe ich entschieden</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Ballast</translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>Als Nächstes: %1.</translation>
    </message>
    <message>
        <source>Open: neither confirmed by you nor measured.</source>
        <translation>Offen: weder von dir bestätigt noch gemessen.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Fahren</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>The file keeps, for each car, which steps you decided. Nothing is locked by it; the mark on the ruler shows how far the plan is.</source>
        <translation>Die Datei hält für jeden Wagen fest, welche Schritte du entschieden hast. Nichts wird dadurch gesperrt; die Marke am Lineal zeigt, wie weit der Plan ist.</translation>
    </message>
    <message>
        <source>Usual values that stand in for yours: %1, among them %2.</source>
        <translation>Übliche Werte, die für deine stehen: %1, darunter %2.</translation>
    </message>
    <message>
        <source>Usual values that stand in for yours: %1.</source>
        <translation>Übliche Werte, die für deine stehen: %1.</translation>
    </message>
    <message>
        <source>Usual: bend the steering axle, roll the car on a board, and type the drift.</source>
        <translation>Üblich: bieg die lenkende Achse, lass den Wagen auf einem Brett rollen und tipp die Abdrift.</translation>
    </message>
    <message>
        <source>Usual: choose the lane, compare cars, then type the times of real runs.</source>
        <translation>Üblich: wähl die Bahn, vergleich Wagen, dann tipp die Zeiten wirklicher Läufe.</translation>
    </message>
    <message>
        <source>Usual: choose the race&apos;s rules, then read its own sheet beside them.</source>
        <translation>Üblich: wähl die Regeln des Rennens, dann lies dessen eigenes Blatt daneben.</translation>
    </message>
    <message>
        <source>Usual: move weight rearward until the front load or the time says stop.</source>
        <translation>Üblich: schieb Gewicht nach hinten, bis die Vorderachslast oder die Zeit halt sagt.</translation>
    </message>
    <message>
        <source>Usual: print the sheet, build, weigh the finished car, and type the reading.</source>
        <translation>Üblich: druck den Plan, bau, wieg den fertigen Wagen und tipp die Ablesung.</translation>
    </message>
    <message>
        <source>Usual: weigh the block, choose a shape, then look at the wood that is left.</source>
        <translation>Üblich: wieg den Klotz, wähl eine Form, dann sieh dir das Holz an, das bleibt.</translation>
    </message>
    <message>
        <source>Usual: weigh the wheels, take the best four, then set the axles&apos; places.</source>
        <translation>Üblich: wieg die Räder, nimm die besten vier, dann setz die Orte der Achsen.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::StepPages</name>
    <message>
        <source>Axle Bench</source>
        <translation>Achsmessplatz</translation>
    </message>
    <message>
        <source>Cant</source>
        <translation>Sturz</translation>
    </message>
    <message>
        <source>Drift Board</source>
        <translation>Rollbrett</translation>
    </message>
    <message>
        <source>Inspection List</source>
        <translation>Abnahmeliste</translation>
    </message>
    <message>
        <source>Pendulum</source>
        <translation>Pendel</translation>
    </message>
    <message>
        <source>Spin-Down</source>
        <translation>Auslauf</translation>
    </message>
    <message>
        <source>Steer and Time</source>
        <translation>Spur und Zeit</translation>
    </message>
    <message>
        <source>The build sheet: to print at true size, cut, measure and tick off.</source>
        <translation>Der Bauplan: in wahrer Größe drucken, ausschneiden, messen und abhaken.</translation>
    </message>
    <message>
        <source>The lane and the air.</source>
        <translation>Die Bahn und die Luft.</translation>
    </message>
    <message>
        <source>The wood: what it weighs and how it is cut.</source>
        <translation>Das Holz: was es wiegt und wie es geschnitten wird.</translation>
    </message>
    <message>
        <source>What the race allows, and how it weighs.</source>
        <translation>Was das Rennen erlaubt, und wie es wiegt.</translation>
    </message>
    <message>
        <source>Wheel Bench</source>
        <translation>Radmessplatz</translation>
    </message>
    <message>
        <source>Wheels Drawn</source>
        <translation>Räder im Bild</translation>
    </message>
    <message>
        <source>Wheels and axles.</source>
        <translation>Räder und Achsen.</translation>
    </message>
    <message>
        <source>Where each wheel points.</source>
        <translation>Wohin jedes Rad zeigt.</translation>
    </message>
    <message>
        <source>Where the weight goes. Drag a piece on the drawing, or type.</source>
        <translation>Wohin das Gewicht kommt. Zieh ein Stück in der Zeichnung, oder tipp.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::StepsPage</name>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 faster</source>
        <translation>%1 schneller</translation>
    </message>
    <message>
        <source>%1 slower</source>
        <translation>%1 langsamer</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Builders say that cant is faster; this model says otherwise: the hub then rubs on the axle&apos;s head all the way, and a tread on its edge is taken to roll no easier. About %1 runs each way would tell.</source>
        <translation>Wagenbauer sagen, Sturz sei schneller; dieses Modell sagt etwas anderes: die Nabe reibt dann den ganzen Weg am Achskopf, und von einer Lauffläche auf der Kante wird angenommen, dass sie nicht leichter rollt. Etwa %1 Läufe auf jede Art würden es zeigen.</translation>
    </message>
    <message>
        <source>Each alone, on this car, within the rules; the range is one sigma of what is not known for sure, not of the hand that does it.</source>
        <translation>Jedes allein, an diesem Wagen, innerhalb der Regeln; der Bereich ist ein Sigma dessen, was nicht sicher bekannt ist, nicht der Hand, die es tut.</translation>
    </message>
    <message>
        <source>Heat time for one more of each; less is faster.</source>
        <translation>Laufzeit für eins mehr von jedem; weniger ist schneller.</translation>
    </message>
    <message>
        <source>Nothing to work out: the car does not finish.</source>
        <translation>Nichts auszurechnen: der Wagen kommt nicht ins Ziel.</translation>
    </message>
    <message>
        <source>Part of the uncertainty that each brings.</source>
        <translation>Anteil an der Unsicherheit, den jedes bringt.</translation>
    </message>
    <message>
        <source>What a change is worth</source>
        <translation>Was eine Änderung wert ist</translation>
    </message>
    <message>
        <source>What makes the time unsure</source>
        <translation>Was die Zeit unsicher macht</translation>
    </message>
    <message>
        <source>What pays</source>
        <translation>Was sich lohnt</translation>
    </message>
    <message>
        <source>What you can still do</source>
        <translation>Was du noch tun kannst</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird ausgerechnet…</translation>
    </message>
    <message>
        <source>little work</source>
        <translation>wenig Arbeit</translation>
    </message>
    <message>
        <source>much work</source>
        <translation>viel Arbeit</translation>
    </message>
    <message>
        <source>some work</source>
        <translation>etwas Arbeit</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Target</name>
    <message>
        <source>Putty lies where its pocket is. Move the pocket to move it.</source>
        <translation>Knete liegt, wo ihre Tasche ist. Verschieb die Tasche, um sie zu verschieben.</translation>
    </message>
    <message>
        <source>The wood is drilled: holes and pockets stay.</source>
        <translation>Das Holz ist gebohrt: Löcher und Taschen bleiben.</translation>
    </message>
    <message>
        <source>The wood is sawn: its outline stays.</source>
        <translation>Das Holz ist gesägt: sein Umriss bleibt.</translation>
    </message>
    <message>
        <source>This piece is locked. Unlock it to move it.</source>
        <translation>Dieses Stück ist fest. Löse es, um es zu verschieben.</translation>
    </message>
    <message>
        <source>front axle</source>
        <translation>Vorderachse</translation>
    </message>
    <message>
        <source>plan point %1</source>
        <translation>Punkt %1 des Umrisses von oben</translation>
    </message>
    <message>
        <source>profile point %1</source>
        <translation>Punkt %1 des Seitenumrisses</translation>
    </message>
    <message>
        <source>rear axle</source>
        <translation>Hinterachse</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::TemplateExport</name>
    <message>
        <source>Export Templates</source>
        <translation>Schablonen ausgeben</translation>
    </message>
    <message>
        <source>Not Written</source>
        <translation>Nicht geschrieben</translation>
    </message>
    <message>
        <source>Templates for a drawing program (*.dxf)</source>
        <translation>Schablonen für ein Zeichenprogramm (*.dxf)</translation>
    </message>
    <message>
        <source>Templates to print or cut (*.svg)</source>
        <translation>Schablonen zum Drucken oder Schneiden (*.svg)</translation>
    </message>
    <message>
        <source>The wood as a solid (*.stl)</source>
        <translation>Das Holz als Körper (*.stl)</translation>
    </message>
    <message>
        <source>Weight schedule (*.csv)</source>
        <translation>Gewichtsliste (*.csv)</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::TimePlot</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Heat time against %1</source>
        <translation>Laufzeit über %1</translation>
    </message>
    <message>
        <source>best</source>
        <translation>am besten</translation>
    </message>
    <message>
        <source>expected time</source>
        <translation>erwartete Zeit</translation>
    </message>
    <message>
        <source>ms slower</source>
        <translation>ms langsamer</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>within 1 ms of the best</source>
        <translation>weniger als 1 ms vom Besten</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ToolPanel</name>
    <message>
        <source>Diameter of the drill bit</source>
        <translation>Durchmesser des Bohrers</translation>
    </message>
    <message>
        <source>Drag a pocket from corner to corner in any view. From above and from the front it is cut 10 mm deep (3/8 in), from the side right through.</source>
        <translation>Zieh in einer beliebigen Ansicht eine Tasche von Ecke zu Ecke. Von oben und von vorn wird sie 10 mm tief (3/8 in), von der Seite ganz durch.</translation>
    </message>
    <message>
        <source>Drag from where the drill goes in to where it stops. A click drills straight into the view: 10 mm deep (3/8 in) from above and from the front, right through from the side.</source>
        <translation>Zieh von dort, wo der Bohrer eintritt, bis dahin, wo er aufhört. Ein Klick bohrt gerade in die Ansicht: 10 mm tief (3/8 in) von oben und von vorn, ganz durch von der Seite.</translation>
    </message>
    <message>
        <source>Draw &amp;Bore</source>
        <translation>&amp;Bohrung zeichnen</translation>
    </message>
    <message>
        <source>Draw &amp;Pocket</source>
        <translation>&amp;Tasche zeichnen</translation>
    </message>
    <message>
        <source>Dri&amp;ll bit</source>
        <translation>Bohre&amp;r</translation>
    </message>
    <message>
        <source>Drill bit</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>The bits you own, or type another diameter.</source>
        <translation>Die Bohrer, die du hast, oder tipp einen anderen Durchmesser.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Trace</name>
    <message>
        <source>Find picture again</source>
        <translation>Bild wiederfinden</translation>
    </message>
    <message>
        <source>Found again: %1</source>
        <translation>Wiedergefunden: %1</translation>
    </message>
    <message>
        <source>Laid under the drawing: %1. Set its scale by two points.</source>
        <translation>Unter die Zeichnung gelegt: %1. Setz den Maßstab mit zwei Punkten.</translation>
    </message>
    <message>
        <source>Lay a Picture under the Drawing</source>
        <translation>Bild unter die Zeichnung legen</translation>
    </message>
    <message>
        <source>Lay picture: %1</source>
        <translation>Bild unterlegen: %1</translation>
    </message>
    <message>
        <source>Read the Side Outline from SVG</source>
        <translation>Seitenumriss aus SVG lesen</translation>
    </message>
    <message>
        <source>Read the Top Outline from SVG</source>
        <translation>Umriss von oben aus SVG lesen</translation>
    </message>
    <message>
        <source>SVG drawings (*.svg);;All files (*)</source>
        <translation>SVG-Zeichnungen (*.svg);;Alle Dateien (*)</translation>
    </message>
    <message numerus="yes">
        <source>Taken in from %1: an outline of %n point(s).</source>
        <translation>
            <numerusform>Aus %1 übernommen: ein Umriss mit %n Punkt.</numerusform>
            <numerusform>Aus %1 übernommen: ein Umriss mit %n Punkten.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>rampwright::ui::TuningView</name>
    <message>
        <source>%1 anticlockwise</source>
        <translation>%1 gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>%1 clockwise</source>
        <translation>%1 im Uhrzeigersinn</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>&amp;Remove the Entry</source>
        <translation>Eintrag &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Set the Wheel to What the Board Showed</source>
        <translation>Rad auf das &amp;setzen, was das Brett zeigte</translation>
    </message>
    <message>
        <source>A ro&amp;ll drifted</source>
        <translation>Beim Ro&amp;llen abgedriftet</translation>
    </message>
    <message>
        <source>Axle &amp;turned by</source>
        <translation>Achse ge&amp;dreht um</translation>
    </message>
    <message>
        <source>Believed drift %1 over %2, target %3. Steer %4. Within tolerance with a chance of %5.</source>
        <translation>Geschätzte Abdrift %1 über %2, Ziel %3. Spur %4. Innerhalb der Toleranz mit einer Chance von %5.</translation>
    </message>
    <message>
        <source>Every roll and turn in the order they happened. One that is far off what the log expected is marked: look for dust, a wheel that rubs, a board that is not level.</source>
        <translation>Jeder Rollversuch und jede Drehung, der Reihe nach. Was weit von dem abliegt, was das Protokoll erwartet hat, ist markiert: such nach Staub, einem Rad, das reibt, einem Brett, das nicht eben liegt.</translation>
    </message>
    <message>
        <source>How far the watched mark went sideways on this roll: positive to the car&apos;s left. Press Return to log it.</source>
        <translation>Wie weit die beobachtete Marke bei diesem Rollversuch seitwärts ging: positiv nach links vom Wagen aus. Eingabe trägt es ein.</translation>
    </message>
    <message>
        <source>How far you turned the guide wheel&apos;s axle, seen from its head: positive clockwise. Press Return to log it.</source>
        <translation>Wie weit du die Achse des führenden Rads gedreht hast, vom Kopf aus gesehen: positiv im Uhrzeigersinn. Eingabe trägt es ein.</translation>
    </message>
    <message>
        <source>Sets the steer of the touching front wheel in the plan to what the log believes.</source>
        <translation>Setzt die Spur des aufsetzenden Vorderrads im Plan auf das, was das Protokoll schätzt.</translation>
    </message>
    <message>
        <source>Takes the chosen line out of the log, as if it had not happened.</source>
        <translation>Nimmt die gewählte Zeile aus dem Protokoll, als wäre sie nicht geschehen.</translation>
    </message>
    <message>
        <source>Tuning log</source>
        <translation>Einstellprotokoll</translation>
    </message>
    <message>
        <source>Unusual?</source>
        <translation>Ungewöhnlich?</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>clockwise is positive</source>
        <translation>im Uhrzeigersinn ist positiv</translation>
    </message>
    <message>
        <source>left is positive</source>
        <translation>links ist positiv</translation>
    </message>
    <message>
        <source>rolled: %1</source>
        <translation>gerollt: %1</translation>
    </message>
    <message>
        <source>turned the axle %1</source>
        <translation>Achse gedreht um %1</translation>
    </message>
    <message>
        <source>yes: look for a cause</source>
        <translation>ja: such nach einer Ursache</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::UnderlayPanel</name>
    <message>
        <source>%1. Its scale and place are kept: put it back, or find it again.</source>
        <translation>%1. Maßstab und Ort bleiben erhalten: leg es zurück, oder such es neu.</translation>
    </message>
    <message>
        <source>&amp;In the</source>
        <translation>&amp;In der</translation>
    </message>
    <message>
        <source>&amp;Scale by Two Points</source>
        <translation>&amp;Maßstab aus zwei Punkten</translation>
    </message>
    <message>
        <source>A photo, a scan or a sketch under the drawing, to trace. It can be dropped on the drawing, too. It is never printed.</source>
        <translation>Ein Foto, ein Scan oder eine Skizze unter der Zeichnung, zum Nachzeichnen. Das Bild lässt sich auch auf die Zeichnung ziehen. Es wird nie gedruckt.</translation>
    </message>
    <message>
        <source>Chooses the picture&apos;s file anew; scale and place stay as they are.</source>
        <translation>Wählt die Datei des Bilds neu; Maßstab und Ort bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Click two places on the picture and type how far apart they are.</source>
        <translation>Klick zwei Stellen im Bild an und tipp, wie weit sie auseinander sind.</translation>
    </message>
    <message>
        <source>Find It Again…</source>
        <translation>Wiederfinden…</translation>
    </message>
    <message>
        <source>Hide picture</source>
        <translation>Bild verbergen</translation>
    </message>
    <message>
        <source>How far the picture is turned, counter-clockwise</source>
        <translation>Wie weit das Bild gedreht ist, gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>How strongly the picture shows</source>
        <translation>Wie kräftig sich das Bild zeigt</translation>
    </message>
    <message>
        <source>Lay a Picture…</source>
        <translation>Bild unterlegen…</translation>
    </message>
    <message>
        <source>M&amp;irrored</source>
        <translation>&amp;Gespiegelt</translation>
    </message>
    <message>
        <source>Mirror picture</source>
        <translation>Bild spiegeln</translation>
    </message>
    <message>
        <source>Mo&amp;ve</source>
        <translation>&amp;Verschieben</translation>
    </message>
    <message>
        <source>Outline from SVG…</source>
        <translation>Umriss aus SVG…</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>%1 wird gelesen…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Scale picture</source>
        <translation>Maßstab des Bilds setzen</translation>
    </message>
    <message>
        <source>Sho&amp;wn</source>
        <translation>&amp;Sichtbar</translation>
    </message>
    <message>
        <source>Show picture</source>
        <translation>Bild zeigen</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Strength of picture</source>
        <translation>Stärke des Bilds</translation>
    </message>
    <message>
        <source>Takes a closed line of an SVG drawing in as the outline, at its own size.</source>
        <translation>Übernimmt eine geschlossene Linie einer SVG-Zeichnung als Umriss, in ihrer eigenen Größe.</translation>
    </message>
    <message>
        <source>Takes the picture away; its file stays where it is.</source>
        <translation>Nimmt das Bild weg; seine Datei bleibt, wo sie ist.</translation>
    </message>
    <message>
        <source>The picture is %1 wide now.</source>
        <translation>Das Bild ist jetzt %1 breit.</translation>
    </message>
    <message>
        <source>Turn picture</source>
        <translation>Bild drehen</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Gedreht um</translation>
    </message>
    <message>
        <source>Which view&apos;s picture the fields below are about.</source>
        <translation>Um das Bild welcher Ansicht es in den Feldern darunter geht.</translation>
    </message>
    <message>
        <source>While it is on, the picture is dragged, not the car.</source>
        <translation>Solange es an ist, wird das Bild gezogen, nicht der Wagen.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of picture</source>
        <translation>Breite des Bilds</translation>
    </message>
    <message>
        <source>Width of the picture</source>
        <translation>Breite des Bilds</translation>
    </message>
    <message>
        <source>side view</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>top view</source>
        <translation>Draufsicht</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ValueField</name>
    <message>
        <source>Set %1</source>
        <translation>%1 setzen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::ValueSlip</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::Verdicts</name>
    <message>
        <source>breaks the rule</source>
        <translation>bricht die Regel</translation>
    </message>
    <message>
        <source>look at it yourself</source>
        <translation>sieh selbst nach</translation>
    </message>
    <message>
        <source>passes</source>
        <translation>besteht</translation>
    </message>
    <message>
        <source>passes narrowly</source>
        <translation>besteht knapp</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::VersusPanel</name>
    <message>
        <source>%1 is faster by %2, one sigma %3; %4 is the faster car in %5 of the draws.</source>
        <translation>%1 ist um %2 schneller, ein Sigma %3; %4 ist in %5 der Ziehungen der schnellere Wagen.</translation>
    </message>
    <message>
        <source>%1 wins %2 of the heats</source>
        <translation>%1 gewinnt %2 der Läufe</translation>
    </message>
    <message>
        <source>A race needs two cars: duplicate this one and change the copy.</source>
        <translation>Ein Rennen braucht zwei Wagen: duplizier diesen und ändere die Kopie.</translation>
    </message>
    <message>
        <source>At the finish %1 leads by %2.</source>
        <translation>Im Ziel führt %1 mit %2.</translation>
    </message>
    <message>
        <source>First car</source>
        <translation>Erster Wagen</translation>
    </message>
    <message>
        <source>Second car</source>
        <translation>Zweiter Wagen</translation>
    </message>
    <message>
        <source>What both cars share is drawn once for both: the lane, the air, the kind of friction. What is each car&apos;s own is drawn apart.</source>
        <translation>Was beide Wagen teilen, wird einmal für beide gezogen: die Bahn, die Luft, die Art der Reibung. Was jedem Wagen eigen ist, wird getrennt gezogen.</translation>
    </message>
    <message>
        <source>against</source>
        <translation>gegen</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WeighSlip</name>
    <message>
        <source>1. Whole car: the empty scale shows zero. Put the car on, read, take it off; three times.</source>
        <translation>1. Ganzer Wagen: die leere Waage zeigt null. Wagen darauf, ablesen, abnehmen; dreimal.</translation>
    </message>
    <message>
        <source>2. Front: a block exactly as high as the scale beside it. Front wheels on the scale, rear wheels on the block, wheels free to roll.</source>
        <translation>2. Vorn: ein Klotz genau so hoch wie die Waage daneben. Vorderräder auf die Waage, Hinterräder auf den Klotz, Räder frei zum Rollen.</translation>
    </message>
    <message>
        <source>3. Rear, as a check: the other way round. Front and rear must add up to the whole.</source>
        <translation>3. Hinten, zur Probe: andersherum. Vorn und hinten müssen zusammen das Ganze ergeben.</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Local rules and the inspector decide; this list only helps to come prepared.</source>
        <translation>Die örtlichen Regeln und der Prüfer entscheiden; diese Liste hilft nur, gut vorbereitet zu kommen.</translation>
    </message>
    <message>
        <source>Nothing: the car is as planned, as far as the scale can tell.</source>
        <translation>Nichts: der Wagen ist wie geplant, soweit die Waage es zeigen kann.</translation>
    </message>
    <message>
        <source>Plan and car</source>
        <translation>Plan und Wagen</translation>
    </message>
    <message>
        <source>Rear</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Weigh the car, and this says what to do.</source>
        <translation>Wieg den Wagen, und hier steht, was zu tun ist.</translation>
    </message>
    <message>
        <source>Weigh the finished car</source>
        <translation>Den fertigen Wagen wiegen</translation>
    </message>
    <message>
        <source>What to trim</source>
        <translation>Was zu trimmen ist</translation>
    </message>
    <message>
        <source>Whole car</source>
        <translation>Ganzer Wagen</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WheelBenchView</name>
    <message numerus="yes">
        <source>%n wheel(s) taken.</source>
        <translation>
            <numerusform>%n Rad übernommen.</numerusform>
            <numerusform>%n Räder übernommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Put These Four on the Car</source>
        <translation>Diese vier auf den &amp;Wagen setzen</translation>
    </message>
    <message>
        <source>A&amp;dd a Wheel</source>
        <translation>Rad &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Fit four bench wheels</source>
        <translation>Vier Räder vom Messplatz einsetzen</translation>
    </message>
    <message>
        <source>Measured wheels</source>
        <translation>Gemessene Räder</translation>
    </message>
    <message>
        <source>Mould mark</source>
        <translation>Formnummer</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Open a Table of Wheels</source>
        <translation>Tabelle der Räder öffnen</translation>
    </message>
    <message>
        <source>Rem&amp;ove the Wheel</source>
        <translation>Rad &amp;entfernen</translation>
    </message>
    <message>
        <source>Run-out</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Spins for</source>
        <translation>Dreht sich</translation>
    </message>
    <message>
        <source>Take %1 for the wheel that meets the rail, %2 beside it, %3 and %4 at the rear. Worth %5 against four taken blindly.</source>
        <translation>Nimm %1 als das Rad, das die Schiene trifft, %2 daneben, %3 und %4 hinten. Das ist %5 wert gegenüber vier blind gegriffenen.</translation>
    </message>
    <message>
        <source>Take %1 for the wheel that meets the rail, %2 for the raised one, %3 and %4 at the rear. Worth %5 against four taken blindly.</source>
        <translation>Nimm %1 als das Rad, das die Schiene trifft, %2 als das angehobene, %3 und %4 hinten. Das ist %5 wert gegenüber vier blind gegriffenen.</translation>
    </message>
    <message>
        <source>Takes wheels from a table on the clipboard. Its first line names the columns: name, mould, mass, diameter, runout, bore, spin.</source>
        <translation>Nimmt Räder aus einer Tabelle der Zwischenablage. Die erste Zeile nennt die Spalten: name, mould, mass, diameter, runout, bore, spin.</translation>
    </message>
    <message>
        <source>Type into a cell, in any unit; a click on a heading sorts. The run-out is what a gauge on the tread shows from least to most in a turn. What is odd is noted, never dropped.</source>
        <translation>Tipp in eine Zelle, in jeder Einheit; ein Klick auf eine Überschrift sortiert. Der Schlag ist, was eine Messuhr auf der Lauffläche in einer Umdrehung vom Kleinsten zum Größten zeigt. Auffälliges wird vermerkt, nie weggelassen.</translation>
    </message>
    <message>
        <source>Weighs</source>
        <translation>Wiegt</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>odd %1</source>
        <translation>%1 auffällig</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WheelPlotView</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, odd</source>
        <translation>%1, auffällig</translation>
    </message>
    <message numerus="yes">
        <source>%n wheel(s) without these measurements are not shown.</source>
        <translation>
            <numerusform>%n Rad ohne diese Messungen ist nicht gezeigt.</numerusform>
            <numerusform>%n Räder ohne diese Messungen sind nicht gezeigt.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Zeig</translation>
    </message>
    <message>
        <source>Column shown across</source>
        <translation>Spalte zur Seite</translation>
    </message>
    <message>
        <source>Column shown upward</source>
        <translation>Spalte nach oben</translation>
    </message>
    <message>
        <source>The wheels of the bench&apos;s table. A triangle marks a wheel odd in a column shown, a star the four to take.</source>
        <translation>Die Räder der Messtabelle. Ein Dreieck markiert ein Rad, das in einer gezeigten Spalte auffällt, ein Stern die vier, die zu nehmen sind.</translation>
    </message>
    <message>
        <source>What it is shown against: another measurement, or the order in the table.</source>
        <translation>Wogegen sie gezeigt wird: eine andere Messung, oder die Reihenfolge in der Tabelle.</translation>
    </message>
    <message>
        <source>Which measurement of the wheels is shown upward.</source>
        <translation>Welche Messung der Räder nach oben gezeigt wird.</translation>
    </message>
    <message>
        <source>a&amp;gainst</source>
        <translation>&amp;über</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>mould mark %1</source>
        <translation>Formnummer %1</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>auffällig</translation>
    </message>
    <message>
        <source>order in the table</source>
        <translation>Reihenfolge in der Tabelle</translation>
    </message>
    <message>
        <source>run-out</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>spin time</source>
        <translation>Drehzeit</translation>
    </message>
    <message>
        <source>to take</source>
        <translation>zu nehmen</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Rad</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WhyButton</name>
    <message>
        <source>Where this number comes from</source>
        <translation>Woher diese Zahl kommt</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Warum? %1</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WhyPopover</name>
    <message>
        <source>&amp;Read the model</source>
        <translation>Das &amp;Modell lesen</translation>
    </message>
    <message>
        <source>Show the &amp;formula</source>
        <translation>&amp;Formel zeigen</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>This figure has no value now, so there is nothing to explain.</source>
        <translation>Diese Zahl hat jetzt keinen Wert, also gibt es nichts zu erklären.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WoodChoice</name>
    <message>
        <source>&amp;Kind of wood</source>
        <translation>&amp;Holzart</translation>
    </message>
    <message>
        <source>Boards vary: two in three weigh %1 to %2 kg/m³. Weigh your block.</source>
        <translation>Bretter sind verschieden: zwei von drei haben %1 bis %2 kg/m³. Wieg deinen Klotz.</translation>
    </message>
    <message>
        <source>Its density is the table&apos;s. Your own block weighed is better, and wins.</source>
        <translation>Ihre Dichte ist die der Tabelle. Dein eigener gewogener Klotz ist besser, und er gilt.</translation>
    </message>
    <message>
        <source>Kind of wood</source>
        <translation>Holzart</translation>
    </message>
    <message>
        <source>The stated density counts: %1 kg/m³.</source>
        <translation>Die angegebene Dichte gilt: %1 kg/m³.</translation>
    </message>
    <message>
        <source>The weighed block counts: %1 kg/m³.</source>
        <translation>Der gewogene Klotz gilt: %1 kg/m³.</translation>
    </message>
</context>
<context>
    <name>rampwright::ui::WoodPanel</name>
    <message>
        <source>&amp;Add After</source>
        <translation>&amp;Dahinter einfügen</translation>
    </message>
    <message>
        <source>&amp;Diameter</source>
        <translation>Durch&amp;messer</translation>
    </message>
    <message>
        <source>&amp;Ends</source>
        <translation>&amp;Endet</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>E&amp;ntfernen</translation>
    </message>
    <message>
        <source>&amp;Smooth curve through it</source>
        <translation>Glatte &amp;Kurve hindurch</translation>
    </message>
    <message>
        <source>A point more, midway to the next one. Insert does the same, and a double click on the line.</source>
        <translation>Ein Punkt mehr, mitten zum nächsten. Einfg tut dasselbe, und ein Doppelklick auf die Linie.</translation>
    </message>
    <message>
        <source>Cut from, %1</source>
        <translation>Ausschnitt von, %1</translation>
    </message>
    <message>
        <source>Cut to, %1</source>
        <translation>Ausschnitt bis, %1</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>D&amp;uplizieren</translation>
    </message>
    <message>
        <source>Diameter of the bore</source>
        <translation>Durchmesser der Bohrung</translation>
    </message>
    <message>
        <source>From tail</source>
        <translation>Vom Heck</translation>
    </message>
    <message>
        <source>From the &amp;tail</source>
        <translation>Vom &amp;Heck</translation>
    </message>
    <message>
        <source>Hei&amp;ght</source>
        <translation>H&amp;öhe</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>How the bore ends</source>
        <translation>Wie die Bohrung endet</translation>
    </message>
    <message>
        <source>Name of the cut</source>
        <translation>Name des Ausschnitts</translation>
    </message>
    <message>
        <source>Points of the outlines, pockets and bores</source>
        <translation>Punkte der Umrisse, Taschen und Bohrungen</translation>
    </message>
    <message>
        <source>The point&apos;s distance from the tail</source>
        <translation>Abstand des Punkts vom Heck</translation>
    </message>
    <message>
        <source>The point&apos;s distance to the left of the centre line</source>
        <translation>Abstand des Punkts nach links von der Mittellinie</translation>
    </message>
    <message>
        <source>The point&apos;s height above the bottom of the wood</source>
        <translation>Höhe des Punkts über der Unterseite des Holzes</translation>
    </message>
    <message>
        <source>To the &amp;left</source>
        <translation>Nach &amp;links</translation>
    </message>
    <message>
        <source>To the left</source>
        <translation>Nach links</translation>
    </message>
    <message>
        <source>What gives the wood its shape. Choose one to see its fields below; it is marked on the drawing too.</source>
        <translation>Was dem Holz seine Form gibt. Wähl etwas davon, um unten seine Felder zu sehen; es ist auch in der Zeichnung markiert.</translation>
    </message>
    <message>
        <source>diameter of %1</source>
        <translation>Durchmesser von %1</translation>
    </message>
    <message>
        <source>drill&apos;s point</source>
        <translation>Bohrerspitze</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flach</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>place of %1</source>
        <translation>Ort von %1</translation>
    </message>
    <message>
        <source>side point %1: %2, %3</source>
        <translation>Seitenpunkt %1: %2, %3</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>top point %1: %2, %3</source>
        <translation>Oberer Punkt %1: %2, %3</translation>
    </message>
</context>
</TS>
