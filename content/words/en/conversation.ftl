# What the program itself says in every procedure. $value, $low, $high, $amount are figures; $unit is a unit's sign.

greeting = Hello. I am the set-up guide of { $workshop }: a program, with people behind it.
greeting-scope = I guide, you decide. Your maker's manual, local rules and licensed trades come first.
greeting-kept = I keep what you send for { $days } days; you and the workshop's desk can read it. "erase me" deletes it, "person" calls somebody.
menu-procedure = What would you like to do?
menu-machine = Which machine is it?
set-up-opened = { $machine }: we take it step by step.

link-unknown = That link leads to something I do not have.
link-replace = You have a set-up open. Keep it, or start the new one?
link-keep = Keep it
link-start-new = Start the new one
link-left-as-is = The other set-up ends here. What was turned stays as it is.
withdrawn = The workshop has withdrawn this procedure: { $why }.
withdrawn-goes-on = We go on with the right one.

button-done = Done
button-understood = Understood
button-skip = Skip
button-yes = Yes
button-no = No
button-jumping = It jumps
button-stale = That button is from earlier. Here is where we are.
button-over = That is over. Here is what I can do.

ask-number = Send the number.
ask-speed = Send the idle speed.
ask-readings = Send all { $count } numbers in one message, in order.

heard-question = Is that { $value } { $unit }?
heard-as = { $typed } = { $value } { $unit }
send-again = Not that, then.
send-all-at-once = I need them all in one message, from closed to closed.
read-again = That is a big step. Look again, every digit.
read-once-more = Look once more and send every digit.
came-back-differently = It came back to another place than before.
passed-to-desk = That went to the workshop.
number-wanted = I need the number from the meter.
choose-one = Please choose one.
confirm-wanted = Tap the button, or type done, when it is so.
not-yet = Take your time. Tap the button, or type done, when it is so.
lost-reading = Only the number on the meter, with all its digits.
lost-person = If we don't get on, type person: somebody at the workshop will look at it.
picture-kept = Thank you for the picture. I can't read it; a person at the desk can.
picture-passed-on = The picture went to the desk.
edited = You changed a message. I go by new messages only.

unclear-nothing-understood = I did not understand that.
unclear-two-meanings = That could mean two things.
unclear-bare-figure = I need it with its decimal point, or with its unit.
unclear-wrong-quantity = That is another unit. Set the meter to DC volts.
unclear-malformed-number = I can't make out the number. Just its digits, please.
unclear-sign-or-bullet = I can't tell whether that is a minus sign.
unclear-bound-only = I need what the display shows, all digits.
unclear-refers-back = I need a fresh reading.
unclear-too-long = That is too long for me. Just the number, please.
unclear-one-number = I need one number: what the meter shows now.
unclear-count = I need one number.
unclear-digits = That is too coarse to tell. Set the meter to the range that shows steps of { $digit }.
unclear-meter = This meter can't tell that closely.

verdict-pass = { $value } { $unit }. Right.
verdict-loose = { $value } { $unit }. Hold it there.
verdict-out = { $value } { $unit }. It should show { $low } to { $high }.
verdict-out-high = { $value } { $unit }. It should show { $high } or less.
verdict-out-low = { $value } { $unit }. It should show { $low } or more.
verdict-sweep-pass = It rises all the way and comes back. Right.
noted = { $value } { $unit }, noted.
loop-high = { $value }. Too high.
loop-low = { $value }. Too low.

odd-value = { $value } { $unit } does not fit.
odd-range = { $low } to { $high } { $unit }: it wanders.
next-range = Go to the next range.
odd-overload = The meter is over its range.
odd-nothing = The meter shows nothing.
odd-sweep = The sweep does not rise and fall as it should.
asleep-again = The control unit went to sleep, or the meter did.
jumped-once-more = Once more, with the leads seen to.

move-until = Stop at { $low } to { $high }. Let go.
# Said of a hand that can do no less than a hair at a time.
amount-nudges = { $amount ->
    [1] a hair
   *[other] about { $amount } hairs
 }
amount-turns = { $amount ->
    [0.0625] a sixteenth of a turn
    [0.125] an eighth of a turn
    [0.1875] three sixteenths of a turn
    [0.25] a quarter turn
    [0.5] half a turn
    [0.75] three quarters of a turn
    [1] one turn
   *[other] { $amount } turns
 }
amount-clicks = { $amount ->
    [1] one click
   *[other] { $amount } clicks
 }
move-sensor-body-clockwise = Turn the sensor { amount-nudges } clockwise.
move-sensor-body-counter-clockwise = Turn the sensor { amount-nudges } counter-clockwise.
move-idle-stop-in = Turn the idle stop in, about { amount-turns }.
move-idle-stop-out = Turn the idle stop out, about { amount-turns }.
move-fast-idle-in = Turn the knob in, { amount-clicks }.
move-fast-idle-out = Turn the knob out, { amount-clicks }.
move-upper-screw-in = Upper screw in, a hair.
move-upper-screw-out = Upper screw out, a hair.
move-lower-screw-in = Lower screw in, a hair.
move-lower-screw-out = Lower screw out, a hair.
# The same while the hand is still on the part: a few words.
again-nudge-clockwise = Clockwise, { amount-nudges }.
again-nudge-counter-clockwise = Counter-clockwise, { amount-nudges }.
again-nudge-in = In, { amount-nudges }.
again-nudge-out = Out, { amount-nudges }.
again-turn-in = In, { amount-turns }.
again-turn-out = Out, { amount-turns }.
again-click-in = In, { amount-clicks }.
again-click-out = Out, { amount-clicks }.
again-mm-more = More play, { $amount } mm.
again-mm-less = Less play, { $amount } mm.
again-until-clockwise = Clockwise until it shows { $low } to { $high }. Let go.
again-until-counter-clockwise = Counter-clockwise until it shows { $low } to { $high }. Let go.
again-until-in = In until it shows { $low } to { $high }. Let go.
again-until-out = Out until it shows { $low } to { $high }. Let go.
aim-off = Tightening shifts it. We aim off for that.
move-cable-more = Give the cable { $amount } mm more play.
move-cable-less = Give the cable { $amount } mm less play.

do-wake = { $wake }
do-sleep = Let the control unit go back to sleep: unplug what woke it.
do-probe = Red lead on the { $signal }, black on the { $ground }.
do-probe-supply = Red lead on the { $supply }, black on the { $ground }.
do-probe-ground = Red lead on the { $ground }, black on battery minus.
do-probe-battery = Red lead on battery plus, black on battery minus.
do-unprobe = Take the pins out.
do-back-off-idle-stop = Idle stop: { $where }. Turn it out.
do-back-off-fast-idle = Fast idle: { $where }. Turn it out.
do-free-play-cable = Give the throttle cable free play.
do-turn-bars = Turn the bars lock to lock.
do-mark-sensor-body = Mark where the sensor sits.
do-restore-sensor-body = Put the sensor back to your mark.
do-loosen-sensor-screws = Loosen both sensor screws until it turns with some drag.
do-tighten-sensor-screws = Nip up both screws in turn, a little each. Hands off, wait a moment.
do-tighten-sensor-screws-to = Tighten both screws in turn, a little each, to { $torque } Nm. Hands off, wait a moment.
do-open = Open the throttle fully.
do-close = Close the throttle.
do-snap = Snap the throttle open and let go.
do-engage-fast-idle = Push the fast idle knob in.
do-release-fast-idle = Roll the grip shut so that the fast idle knob springs out.
do-start-engine = Start the engine.
do-stop-engine = Stop the engine.
do-check-leads = Look which wires the pins sit in. Put them right.
do-check-meter = Meter: DC volts, HOLD and REL off, red lead in the volts jack.
do-check-cable = Turn the bars and watch the reading. Mend a tight cable.
do-check-screws = Push the sensor by hand and watch the reading. Tighten what is loose.

unit-per-minute = rpm

wire-supply = supply wire
wire-signal = signal wire
wire-ground = ground wire
wire-plain = { $colour } wire
wire-striped = { $colour } wire with { $stripe } stripe
colour-black = black
colour-white = white
colour-grey = grey
colour-brown = brown
colour-red = red
colour-orange = orange
colour-yellow = yellow
colour-green = green
colour-light-green = light green
colour-blue = blue
colour-light-blue = light blue
colour-violet = violet
colour-pink = pink
tool-any = the right tool
part-sensor-body = sensor
part-upper-screw = upper screw
part-lower-screw = lower screw
part-idle-stop = idle stop
part-fast-idle = fast idle
part-cable = cable
part-chain-adjuster = chain adjuster
part-preload-collar = preload collar

measure-supply-voltage = Supply
measure-ground-drop = Ground drop
measure-battery-voltage = Battery
measure-charging-voltage = Charging
measure-signal-closed-stop = Closed stop
measure-signal-idle = Idle
measure-signal-idle-static = Idle, engine off
measure-signal-idle-warm = Idle, warm
measure-signal-fast-idle = Fast idle
measure-signal-released = Released
measure-signal-wide-open = Wide open
measure-signal-sweep = Sweep
measure-signal-snapped = After a snap
measure-idle-speed = Idle speed
measure-free-play = Free play
measure-chain-slack = Chain slack
measure-rider-sag = Rider sag
measure-free-sag = Free sag
measure-tyre-pressure = Tyre pressure

caution-guidance-only = This is guidance: your maker's manual comes first. In doubt, stop and ask.
caution-guidance-only-name = guidance only
caution-fuel-and-heat = Cold engine only. No flame or spark near fuel.
    Never strap the throttle open, never open a fuel line.
caution-fuel-and-heat-name = fuel and heat
caution-battery-care = Rings and watch off. Keep the leads apart: a short can burn you.
caution-battery-care-name = battery
caution-back-probing = Slide thin pins in along the wire seals. Never pierce a wire.
    Keep the pins apart: supply on ground can kill the control unit.
caution-back-probing-name = pins in the plug
caution-waking = Engine off, neutral, hands clear: a starter button may crank it.
    Anything warm, smoke, or a pump that runs on: unplug it and tell me.
caution-waking-name = waking it
caution-stops-off = While the stops are off, nobody presses the starter.
caution-stops-off-name = stops off
caution-loose-sensor = While the sensor is loose, nobody presses the starter. Fingers clear of the throttle plate.
caution-loose-sensor-name = loose sensor
caution-running-engine = Exhaust gas kills: outdoors only.
    Hands, leads and clothes clear of chain, wheel and exhaust.
    If it races: kill switch.
caution-running-engine-name = running engine
caution-hot-engine = It is running and hot. Turn the idle stop from the side, clear of exhaust and fan.
caution-hot-engine-name = hot engine

figure-taken = { $value } { $unit }, from your manual.
figure-out-of-reach = That can't be right: I expect { $low } to { $high } { $unit }. Look it up again.

check-only-by-wire = A throttle without a cable has a powered plate that can trap fingers. We only measure; nothing gets set here.
check-only-riveted = A fixed sensor is not set. We only measure.
check-only-not-known = As long as that is not known, we only measure and turn nothing.
check-only-map-not-known = Without knowing the map, there is no figure to set to. We only measure.
check-only-codes = A stored code comes first. We only measure, and set nothing.
check-only-dirty-bore = Clean the bore first: set on dirt, it is wrong again tomorrow. We only measure.
check-only-no-figure = Without a figure there is nothing to set to. We only measure.
check-only-not-adjustable = This machine's sensor is fixed and is not set. We only measure.

help = Type a number, or: done, back, repeat, pause, stop, person. Smoke, fuel, a throttle that sticks: just say so.
where = { $machine }. Part { $part } of { $parts }: { $name }.
where-plain = { $machine }.
part-begins = Part { $part } of { $parts }: { $name }.
back-engine-runs = Stop the engine first.
back-sensor-loose = First set the sensor and tighten it.
back-no-further = There is nothing before this.
paused = Write to me when you go on.
pause-engine = Stop the engine first.
come-back = Welcome back.
come-back-pins = Look first that both pins still sit where they were.
awake-too-long = The control unit has been awake for { $minutes } minutes. Spare the battery.

give-up = Shall we put everything back as it was?
way-back-uncounted = The idle stop was not counted. Turn it in until it just touches. It won't idle as before: don't ride it yet.
give-up-restore = Put it back
give-up-leave = Leave it as it is
give-up-go-on = Go on with the job
give-up-wait = Wait for the person

called = I have called a person at the workshop. They see everything you sent.
called-closed = The workshop is closed now. Your call is first in line when it opens.
called-go-on = You can go on meanwhile.
enough = { $minutes } minutes by now. "person" calls somebody to help; "pause" keeps your place.
leave-it = Jumper off, meter off. Don't start or ride it like this.
held = This waits for a person at the workshop. Jumper off, meter off. Don't start or ride it like this.

flag-throttle-sticks-first = Kill switch. Hands off the grip. Don't start it again.
flag-revs-hang-first = Kill switch. Let it stand. Don't start it again.
flag-engine-wont-stop-first = Kill switch. Jumper off. Stand clear.
flag-fuel-leak-first = Kill switch. Jumper off. No spark, no flame. Step away.
flag-smoke-first = Kill switch. Jumper off. Step away. If it burns: emergency number.
flag-hot-leads-first = Jumper off. Don't touch the leads. Stand clear.
flag-pump-runs-on-first = Jumper off now. Leave it off.
flag-unwell-first = Engine off. Out into fresh air now. Not better at once: emergency number.
flag-injured-first = Engine off. Call the emergency number if it is serious. Look after the hurt person first.

stuck-slots-at-end = The sensor is at the end of its slots. Leave it there: that is one for a person.
stuck-moves-stop-helping = Turning on does not help now. That is one for a person.
stuck-too-coarse = It can't be set finer than this by hand. A person decides.
call-unknown-cause-owner = I don't know what would show these figures. That is one for a person.
call-not-for-an-owner-owner = That is not one to mend in the garage with a chat. A person takes over.
call-nothing-left-owner = We have checked all we can from here. A person takes over.
call-look-alike-owner = Several causes would look like that. A person takes over.

record-set = { $machine } is set. Well done.
record-right-as-found = { $machine } was right as found. Nothing was changed that matters.
record-accepted = { $machine }: finished with the desk.
record-not-set = { $machine } is not set.
record-baseline-checked = The baseline was checked at the closed stop.
record-baseline-not-checked = The baseline itself was not checked.
record-elsewhere = The sensor is not the cause of your complaint. Look at air leaks, valves, plug, filter and fuel.
record-accepted-by = A value was accepted by { $name }.
record-value = { $measure }: { $value } { $unit }
record-speed-not-checked = Idle speed not checked.
record-code = Your record is { $code }. Keep it for the workshop.

erase-question = Erase everything about you here? That can't be undone.
erase-yes = Erase it
erase-no = Keep it
erased = Everything about you is erased.

