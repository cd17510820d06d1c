# The words of the throttle sensor procedure: throttle-sensor-<stage> says what to do; answers are throttle-sensor-<question>-<answer>.
# Given to each: $machine $wake $connector $supply $signal $ground $minutes $seconds and, for parts, $part $where $tool.

throttle-sensor-complaint = What is wrong with how it runs?
throttle-sensor-complaint-none = Nothing, just checking
throttle-sensor-complaint-runs-badly = Runs badly
throttle-sensor-complaint-bad-idle = Bad idle
throttle-sensor-complaint-flat-acceleration = Flat when I open up
throttle-sensor-complaint-hard-starting = Hard to start

throttle-sensor-place = Engine cold, on its stand, in neutral.
    Outdoors, or where you can run it outdoors without moving it.
    Know your key and your kill switch.
    On the bench: meter, two thin pins, screwdrivers.

throttle-sensor-throttle-kind = What runs from the grip to the throttle body?
throttle-sensor-throttle-kind-cable = A cable
throttle-sensor-throttle-kind-by-wire = Only wires
throttle-sensor-throttle-kind-dont-know = Don't know

throttle-sensor-sensor-fixing = How is the sensor fixed?
throttle-sensor-sensor-fixing-slotted = Screws in long slots
throttle-sensor-sensor-fixing-riveted = Rivets, seal or no slots
throttle-sensor-sensor-fixing-dont-know = Don't know

throttle-sensor-changed = What was changed last on it?
throttle-sensor-changed-nothing = Nothing
throttle-sensor-changed-throttle-body = Throttle body or cable
throttle-sensor-changed-sensor = The sensor
throttle-sensor-changed-exhaust-or-filter = Exhaust or filter
throttle-sensor-changed-dont-know = Don't know

throttle-sensor-map = Which fuel map does it run?
throttle-sensor-map-standard = The standard one
throttle-sensor-map-other = Another one
throttle-sensor-map-dont-know = Don't know

throttle-sensor-map-figure = Which closed-throttle figure does the map's supplier give? Send it in volts.

throttle-sensor-signal-box = Is a tuning box spliced into the sensor's wires?
throttle-sensor-signal-box-none = No
throttle-sensor-signal-box-fitted = Yes
throttle-sensor-signal-box-dont-know = Don't know

throttle-sensor-unplug-box = Unplug the box and join the wires as its maker says. It loads the signal.

throttle-sensor-codes = Does the machine show a stored fault code?
throttle-sensor-codes-none = No
throttle-sensor-codes-stored = Yes

throttle-sensor-bore = Look past the throttle plate. Is the bore clean?
throttle-sensor-bore-clean = Clean
throttle-sensor-bore-dirty = Dark ring or gum
throttle-sensor-bore-dont-know = Can't see

throttle-sensor-valves = Was the valve clearance checked when it was due?
throttle-sensor-valves-in-time = Yes
throttle-sensor-valves-overdue = Overdue
throttle-sensor-valves-dont-know = Don't know

throttle-sensor-altitude = Where does it run?
throttle-sensor-altitude-below = In the lowlands
throttle-sensor-altitude-above = High in the mountains

throttle-sensor-tachometer = How will you read the idle speed?
throttle-sensor-tachometer-have = I have a tachometer
throttle-sensor-tachometer-none = I have none

throttle-sensor-manual-closed = What does your manual give for the closed throttle, idle stop backed off? Send the volts from the manual, not from the meter.
throttle-sensor-manual-idle = What does your manual give at idle, engine off? Send the volts from the manual.
throttle-sensor-manual-fast-idle = What does your manual give with the fast idle on? Send the volts from the manual.
throttle-sensor-manual-speed = Which idle speed does your manual give, warm?

throttle-sensor-battery = Nothing switched on.
throttle-sensor-bench-supply = It has no battery. Connect the bench supply, its fuse in.

throttle-sensor-knob-out = It must stay out by itself.
throttle-sensor-free-play = You should feel a little slack at the grip before anything moves.
throttle-sensor-bars-free = The throttle must not be pulled at either end.

throttle-sensor-supply-leads = For that, unplug the connector { $connector }, push the pins in along the wire seals, and plug it in again. Then meter on.
throttle-sensor-supply = Listen for the fuel pump as it wakes.
throttle-sensor-pump = Did the pump hum, and stop after a few seconds?
throttle-sensor-pump-stops = It stopped
throttle-sensor-pump-no-pump = I heard no pump
throttle-sensor-pump-runs-on = It keeps running
throttle-sensor-signal-leads = Black is there already: only red moves.

throttle-sensor-as-found-idle = This is how it ran. Hands off the grip.
throttle-sensor-as-found-snap = Let it snap shut.
throttle-sensor-as-found-open = Hold it there. If the meter shows OL, go to the next range.
throttle-sensor-as-found-sweep = Stay on this range. Open in four steps to full and come back in four. Note each number from closed to closed.
throttle-sensor-as-found-jumps = Did anything jump or drop on the way?
throttle-sensor-leave-alone = All of it is as it should be. Leave the sensor and the screws alone.
throttle-sensor-only-checked = That was the check. Nothing gets turned here.

throttle-sensor-factory-stop = The plate rests on its own small stop, sealed with paint. It is not the idle stop, and is never touched. How does the paint look?
throttle-sensor-factory-stop-untouched = Unbroken
throttle-sensor-factory-stop-turned = Broken, somebody turned it
throttle-sensor-factory-stop-dont-know = Can't tell

throttle-sensor-mark = A fine line across both. Take a photo too: that is your way back.
throttle-sensor-knob-off = Knob sprung out. Count the clicks until it is free. How many?
throttle-sensor-stop-off = Count the turns until it no longer bears. Leave it in its thread. How many turns?

throttle-sensor-baseline = Throttle shut, hands off. The range with three decimals.
throttle-sensor-supply-again = That was the baseline. The supply once more, before it counts.
throttle-sensor-baseline-again = Wait { $seconds } seconds before you wake it: then it takes up the new closed throttle.
throttle-sensor-baseline-once-more = Once more: it has to come back the same.
throttle-sensor-idle-stop = The baseline stands. On to the idle.
throttle-sensor-idle-stop-again = The idle reading once more.
throttle-sensor-snap = Twice. Then hands off.
throttle-sensor-fast-idle = Leave it in while you set it. Engine off.
throttle-sensor-release = It should come back to the idle reading.
throttle-sensor-fast-idle-again = Once more, to be sure.
throttle-sensor-release-again = And once more.
throttle-sensor-open = Hold it there. If the meter shows OL, go to the next range.
throttle-sensor-sweep = Stay on this range. Open in four steps to full and come back in four. Note each number from closed to closed.
throttle-sensor-jumps = Did anything jump or drop on the way?

throttle-sensor-sweep-jumps-smooth = All smooth
throttle-sensor-sweep-jumps-jumped = It jumped or dropped

throttle-sensor-asleep = Meter off too.
throttle-sensor-leads-out = Both of them. No lead left near chain or exhaust.
throttle-sensor-refitted = Airbox, hoses and everything you took off are back and tight?
throttle-sensor-latched = The sensor's connector is pushed home and latched?
throttle-sensor-snaps-shut = It must snap shut with the bars straight and at both locks.
throttle-sensor-outdoors = The machine stands outdoors, exhaust free?
throttle-sensor-kill-switch = Kill switch tried: you can reach it, and it clicks both ways?
throttle-sensor-people-clear = Neutral, on its stand, and everybody clear of chain, wheel and exhaust?

throttle-sensor-start = Thumb by the kill switch.
throttle-sensor-warm-up = Let it warm up for { $minutes } minutes on the fast idle.
throttle-sensor-warm-knob = It should settle to an even idle.
throttle-sensor-idle-speed = Let it settle.
throttle-sensor-speed-bars = Does the idle speed change on the way?
throttle-sensor-speed-bars-steady = It stays the same
throttle-sensor-speed-bars-changes = It changes
throttle-sensor-idle-speed-again = Bars straight.
throttle-sensor-fault-lamp = Engine still running: is the fault lamp lit, or does it blink?
throttle-sensor-fault-lamp-off = It is off
throttle-sensor-fault-lamp-lit = Lit, or it blinks
throttle-sensor-fault-lamp-no-lamp = It has none
throttle-sensor-engine-off = Then hands off: it is hot.
throttle-sensor-warm-idle = Meter back on the range with three decimals. Now the idle reading, warm: higher than the cold one, and that is right.
throttle-sensor-warm-release = It should come back to the warm idle reading.
throttle-sensor-warm-snap = Hands off, then read.
throttle-sensor-put-away = Meter off too.
throttle-sensor-cover = Cover and seat back on?
throttle-sensor-road-ready = Before you ride: lights, brakes, cables, nothing left loose. Ready?

# What each part of the job is called.
throttle-sensor-section-questions = a few questions
throttle-sensor-section-power-and-cable = battery and cable
throttle-sensor-section-wake-and-probe = wake and probe
throttle-sensor-section-as-found = how it stands
throttle-sensor-section-baseline = the baseline
throttle-sensor-section-idle = idle and fast idle
throttle-sensor-section-before-start = before it starts
throttle-sensor-section-warm = warm, and done

# What each stage is called, at the desk and in the report.
throttle-sensor-complaint-name = What is wrong
throttle-sensor-place-name = Place and tools
throttle-sensor-throttle-kind-name = Cable or wires
throttle-sensor-sensor-fixing-name = How the sensor is fixed
throttle-sensor-changed-name = Changed last
throttle-sensor-map-name = Fuel map
throttle-sensor-map-figure-name = The map's figure
throttle-sensor-signal-box-name = Tuning box
throttle-sensor-unplug-box-name = Tuning box off
throttle-sensor-codes-name = Stored fault codes
throttle-sensor-bore-name = Bore
throttle-sensor-valves-name = Valve clearance
throttle-sensor-altitude-name = Altitude
throttle-sensor-tachometer-name = Tachometer
throttle-sensor-manual-closed-name = Manual: closed throttle
throttle-sensor-manual-idle-name = Manual: idle
throttle-sensor-manual-fast-idle-name = Manual: fast idle
throttle-sensor-manual-speed-name = Manual: idle speed
throttle-sensor-battery-name = Battery
throttle-sensor-bench-supply-name = Bench supply
throttle-sensor-knob-out-name = Fast idle knob out
throttle-sensor-free-play-name = Cable free play
throttle-sensor-bars-free-name = Bars lock to lock
throttle-sensor-supply-leads-name = Pins on the supply
throttle-sensor-supply-name = Supply
throttle-sensor-pump-name = Fuel pump
throttle-sensor-signal-leads-name = Pins on the signal
throttle-sensor-as-found-idle-name = As found: idle
throttle-sensor-as-found-snap-name = As found: after a snap
throttle-sensor-as-found-open-name = As found: wide open
throttle-sensor-as-found-sweep-name = As found: sweep
throttle-sensor-as-found-jumps-name = As found: jumps
throttle-sensor-factory-stop-name = Factory stop
throttle-sensor-mark-name = Mark on the sensor
throttle-sensor-knob-off-name = Fast idle knob backed off
throttle-sensor-stop-off-name = Idle stop backed off
throttle-sensor-baseline-name = Baseline
throttle-sensor-supply-again-name = Supply, once more
throttle-sensor-baseline-again-name = Baseline, once more
throttle-sensor-baseline-once-more-name = Baseline, a third time
throttle-sensor-idle-stop-name = Idle stop
throttle-sensor-snap-name = After a snap
throttle-sensor-fast-idle-name = Fast idle
throttle-sensor-release-name = Released
throttle-sensor-fast-idle-again-name = Fast idle, once more
throttle-sensor-release-again-name = Released, once more
throttle-sensor-idle-stop-again-name = Idle stop, once more
throttle-sensor-open-name = Wide open
throttle-sensor-sweep-name = Sweep
throttle-sensor-jumps-name = Jumps on the way
throttle-sensor-asleep-name = Asleep, meter off
throttle-sensor-leads-out-name = Pins out
throttle-sensor-refitted-name = All refitted
throttle-sensor-latched-name = Connector latched
throttle-sensor-snaps-shut-name = Snaps shut
throttle-sensor-outdoors-name = Outdoors
throttle-sensor-kill-switch-name = Kill switch
throttle-sensor-people-clear-name = Everybody clear
throttle-sensor-start-name = Start
throttle-sensor-warm-up-name = Warm up
throttle-sensor-warm-knob-name = Knob out, warm
throttle-sensor-idle-speed-name = Idle speed
throttle-sensor-speed-bars-name = Idle speed as the bars turn
throttle-sensor-idle-speed-again-name = Idle speed, once more
throttle-sensor-fault-lamp-name = Fault lamp
throttle-sensor-engine-off-name = Engine off
throttle-sensor-warm-idle-name = Idle, warm
throttle-sensor-warm-release-name = Released, warm
throttle-sensor-warm-snap-name = After a snap, warm
throttle-sensor-put-away-name = Pins out, meter off
throttle-sensor-cover-name = Cover and seat
throttle-sensor-road-ready-name = Ready for the road
