# The words of the faults in content/faults and of the checks that find them, for owners and for the desk.
# fault-<id>: its name; fault-<id>-why: what makes us think so, said before the check; fault-<id>-remedy: what mends it.
# check-<id>: what to do or answer; answer-<question>-<answer>: its buttons; call-<reason>: why a person is called, for the desk.

fault-nothing-wrong = nothing wrong
fault-nothing-wrong-why = The figures fit a machine in order.
fault-nothing-wrong-remedy = Nothing needs mending. Go on.

fault-sensor-mis-set = sensor set off its mark
fault-sensor-mis-set-why = The figures fit a sensor that is only set off its mark.
fault-sensor-mis-set-remedy = Set the sensor by the steps.

fault-mistyped = a figure mistyped or misread
fault-mistyped-why = That figure does not fit the ones before. A digit may have slipped.
fault-mistyped-remedy = Read the meter again and send every digit.

fault-unknown = a cause we do not know
fault-unknown-why = No cause that we know shows these figures.
fault-unknown-remedy = A person has to look at it.

fault-leads-swapped = meter leads swapped
fault-leads-swapped-why = That is what the meter shows when red and black have changed places.
fault-leads-swapped-remedy = Red on the signal wire, black on the ground wire.

fault-red-on-supply = red lead on the supply wire
fault-red-on-supply-why = That is what the meter shows when the red lead sits on the supply wire.
fault-red-on-supply-remedy = Move red to the signal wire.

fault-black-on-supply = black lead on the supply wire
fault-black-on-supply-why = That is what the meter shows when the black lead sits on the supply wire.
fault-black-on-supply-remedy = Move black to the ground wire.

fault-red-on-supply-black-on-signal = red on supply, black on signal
fault-red-on-supply-black-on-signal-why = That is what the meter shows with red on the supply wire and black on the signal wire.
fault-red-on-supply-black-on-signal-remedy = Red on the signal wire, black on the ground wire.

fault-red-on-ground-black-on-supply = red on ground, black on supply
fault-red-on-ground-black-on-supply-why = That is what the meter shows with red on the ground wire and black on the supply wire.
fault-red-on-ground-black-on-supply-remedy = Red on the supply wire, black on the ground wire.

fault-leads-on-one-pin = both leads on one wire
fault-leads-on-one-pin-why = The meter shows that when both leads sit on one wire.
fault-leads-on-one-pin-remedy = Red on the signal wire, black on the ground wire.

fault-probe-not-touching = a pin that does not touch
fault-probe-not-touching-why = The meter shows that when a pin does not touch metal.
fault-probe-not-touching-remedy = Push both pins in along the wire seal until they touch.

fault-pin-slips = a pin that slips
fault-pin-slips-why = The figure comes and goes, as with a pin that slips.
fault-pin-slips-remedy = Seat both pins and tie the leads so that nothing pulls.

fault-battery-wire-probed = red lead on a battery wire
fault-battery-wire-probed-why = That is battery voltage. This sensor never sees that much.
fault-battery-wire-probed-remedy = Move red to the signal wire.

fault-meter-on-ac = meter on AC volts
fault-meter-on-ac-why = A meter set to AC shows such figures.
fault-meter-on-ac-remedy = Turn the dial to DC volts.

fault-meter-range = meter on the wrong range
fault-meter-range-why = The range is too small or too coarse for this figure.
fault-meter-range-remedy = Choose the range that shows the figure with the most decimals.

fault-meter-on-ohms = meter on ohms
fault-meter-on-ohms-why = A meter set to ohms shows that on a live wire.
fault-meter-on-ohms-remedy = Turn the dial to DC volts.

fault-meter-battery-weak = weak battery in the meter
fault-meter-battery-weak-why = A weak meter battery makes every figure too high.
fault-meter-battery-weak-remedy = Put a fresh battery into the meter.

fault-red-in-current-jack = red lead in the current jack
fault-red-in-current-jack-why = The meter shows that when red is plugged into the current jack.
fault-red-in-current-jack-remedy = Plug red into the volts jack. Look at the meter's fuse.

fault-meter-hold = HOLD pressed on the meter
fault-meter-hold-why = The figure stands still, as with HOLD pressed.
fault-meter-hold-remedy = Switch HOLD off.

fault-meter-relative = REL pressed on the meter
fault-meter-relative-why = The figure is off by one amount, as with REL pressed.
fault-meter-relative-remedy = Switch REL off.

fault-meter-min-max = MIN/MAX on at the meter
fault-meter-min-max-why = The meter seems to keep its highest figure.
fault-meter-min-max-remedy = Switch MIN/MAX off.

fault-meter-auto-off = meter switched itself off
fault-meter-auto-off-why = A blank meter has mostly switched itself off.
fault-meter-auto-off-remedy = Switch the meter on again.

fault-unit-asleep = control unit asleep
fault-unit-asleep-why = That is what the meter shows when the control unit is asleep.
fault-unit-asleep-remedy = Wake it again.

fault-no-power = control unit has no power
fault-no-power-why = The control unit does not seem to wake.
fault-no-power-remedy = Look at kill switch, key, fuse and relay.

fault-supply-low = sensor supply too low
fault-supply-low-why = The sensor gets less voltage than it should.
fault-supply-low-remedy = Find out why the control unit gives too little.

fault-supply-high = sensor supply too high
fault-supply-high-why = The sensor gets more voltage than it should.
fault-supply-high-remedy = Find out why the control unit gives too much.

fault-battery-flat = battery too low
fault-battery-flat-why = The battery may be too low for this work.
fault-battery-flat-remedy = Charge the battery, let it rest, and start again.

fault-brown-out = voltage sags while awake
fault-brown-out-why = The voltage seems to sag while the control unit is awake.
fault-brown-out-remedy = Charge the battery, and keep the control unit awake for less time.

fault-tight-cable = throttle cable too tight
fault-tight-cable-why = A tight cable holds the throttle a little open, and shows that.
fault-tight-cable-remedy = Give the cable its free play, bars straight and at both locks.

fault-fast-idle-on = fast idle left on
fault-fast-idle-on-why = The figure fits a fast idle knob that is still in.
fault-fast-idle-on-remedy = Roll the grip shut until the knob springs out.

fault-knob-stays-in = fast idle knob stays in
fault-knob-stays-in-why = The knob does not seem to spring out.
fault-knob-stays-in-remedy = Free the knob and its spring.

fault-stop-not-backed-off = idle stop still bears
fault-stop-not-backed-off-why = The figure did not fall as it does once the idle stop is free.
fault-stop-not-backed-off-remedy = Turn the idle stop out until nothing bears on it.

fault-idle-stop-never-bore = idle stop set too far out
fault-idle-stop-never-bore-why = The figure may not fall where the idle stop never bore.
fault-idle-stop-never-bore-remedy = Set the idle stop by the steps.

fault-carbon-in-bore = carbon in the bore
fault-carbon-in-bore-why = Carbon can hold the throttle open just like a stop.
fault-carbon-in-bore-remedy = Clean bore and plate, then set again.

fault-factory-stop-turned = factory stop turned
fault-factory-stop-turned-why = The plate's own stop may have been turned.
fault-factory-stop-turned-remedy = The workshop sets the factory stop by its own method.

fault-plate-wedged = throttle plate bent or wedged
fault-plate-wedged-why = The plate does not seem to close.
fault-plate-wedged-remedy = Take the throttle body off and look at plate and shaft.

fault-wide-open-not-reached = throttle does not open fully
fault-wide-open-not-reached-why = The throttle does not seem to reach wide open.
fault-wide-open-not-reached-remedy = Take up the cable's slack and look at the stop at full throttle.

fault-worn-track-near-idle = sensor track worn near idle
fault-worn-track-near-idle-why = A figure that jumps near idle is the mark of a worn track.
fault-worn-track-near-idle-remedy = Replace the sensor and set it anew.

fault-worn-track-elsewhere = sensor track worn further up
fault-worn-track-elsewhere-why = A jump at one opening is the mark of a worn track.
fault-worn-track-elsewhere-remedy = Replace the sensor and set it anew.

fault-loose-sensor = sensor screws loose
fault-loose-sensor-why = The figure does not come back, as with a loose sensor.
fault-loose-sensor-remedy = Tighten the sensor's screws and set it again.

fault-shaft-play = slack in shaft or sensor drive
fault-shaft-play-why = The figure does not come back, as with slack on the shaft.
fault-shaft-play-remedy = Look at shaft, bearings and the sensor's drive.

fault-slots-at-end = sensor at the end of its slots
fault-slots-at-end-why = The sensor can't turn far enough.
fault-slots-at-end-remedy = Find out why so much is needed before anything is filed.

fault-tang-wrong-side = sensor drive on the wrong side
fault-tang-wrong-side-why = The figure is far off, as with the drive on the wrong side of the shaft.
fault-tang-wrong-side-remedy = Take the sensor off and seat its drive on the right side.

fault-wrong-part-turned = another part was turned
fault-wrong-part-turned-why = The figure did not follow. Another part may have been turned.
fault-wrong-part-turned-remedy = Find the right part, and put the other back.

fault-drifts-when-hot = sensor drifts when hot
fault-drifts-when-hot-why = The figure moves with the heat.
fault-drifts-when-hot-remedy = Replace the sensor and set it anew.

fault-sensor-reversed = supply and ground swapped in the plug
fault-sensor-reversed-why = The signal falls where it should rise: the plug may be wired the wrong way.
fault-sensor-reversed-remedy = Put supply and ground on their own pins.

fault-resistive-ground = bad sensor ground
fault-resistive-ground-why = The sensor's ground wire seems to lose voltage.
fault-resistive-ground-remedy = Mend the ground wire or its joint.

fault-open-ground = sensor ground broken
fault-open-ground-why = The sensor's ground wire may be broken.
fault-open-ground-remedy = Mend the ground wire.

fault-open-supply = sensor supply broken
fault-open-supply-why = No supply seems to reach the sensor.
fault-open-supply-remedy = Mend the supply wire.

fault-resistive-supply = bad supply wire
fault-resistive-supply-why = The supply wire seems to lose voltage.
fault-resistive-supply-remedy = Mend the supply wire or its joint.

fault-open-signal = signal wire broken
fault-open-signal-why = The signal wire may be broken behind the plug.
fault-open-signal-remedy = Mend the signal wire.

fault-signal-shorted = signal wire shorted
fault-signal-shorted-why = The signal stands still, as with a short.
fault-signal-shorted-remedy = Find where the signal wire touches another.

fault-corroded-plug = corroded plug
fault-corroded-plug-why = The figure jumps, as with a corroded plug.
fault-corroded-plug-remedy = Clean the plug and seat it, or replace its pins.

fault-chafed-loom = chafed loom
fault-chafed-loom-why = The figure drops out now and then, as with a chafed loom.
fault-chafed-loom-remedy = Find the chafed place, mostly where the bars bend the loom.

fault-box-on-signal = add-on box on the signal wire
fault-box-on-signal-why = A box on the signal wire bends the figure.
fault-box-on-signal-remedy = Unplug the box and measure again.

fault-air-leak = air leak
fault-air-leak-why = The volts are right and the speed is too high: air may leak in.
fault-air-leak-remedy = Look for the leak: manifold, clamps, hoses.

fault-dirty-bore = dirty bore
fault-dirty-bore-why = The volts are right and the speed is too low: the bore may be dirty.
fault-dirty-bore-remedy = Clean the bore.

fault-valve-clearance = valve clearance
fault-valve-clearance-why = The volts are right: valve clearance may be the cause.
fault-valve-clearance-remedy = Check the valve clearance.

fault-air-filter = air filter
fault-air-filter-why = The volts are right: the air filter may be the cause.
fault-air-filter-remedy = Clean or replace the air filter.

fault-spark-plug = spark plug
fault-spark-plug-why = The volts are right: the spark plug may be the cause.
fault-spark-plug-remedy = Replace the spark plug.

fault-fuel-supply = fuel supply
fault-fuel-supply-why = The volts are right: fuel may be the cause.
fault-fuel-supply-remedy = Check fuel, filter and pressure.

fault-decompressor = decompressor
fault-decompressor-why = The volts are right: the decompressor may be the cause.
fault-decompressor-remedy = Check the decompressor.

fault-charging = charging
fault-charging-why = The battery may not get charged.
fault-charging-remedy = Check charging voltage and regulator.

fault-fuel-map = fuel map
fault-fuel-map-why = The volts are right: the fuel map may not fit.
fault-fuel-map-remedy = Load the map that fits exhaust and filter.

check-read-again = Look at the meter again. Send every digit.
check-wake-again = Wake the control unit again. Then send the number.
check-look-at-leads = Let the control unit sleep. Look which wires the pins sit in, and put them right. Wake it. Then send the number.
check-leads-on-battery = Red on battery plus, black on battery minus, red in the meter's volts jack. Then send the number.
check-look-at-meter = Look at the meter: DC volts, the right range, HOLD and REL off, red in the volts jack. Then send the number.
check-look-at-cable = Turn the bars lock to lock and watch the number. If it moves, give the cable free play. Then send the number, bars straight.
check-look-at-screws = Push the sensor gently by hand and watch the number. Tighten what is loose. Then send the number.
check-back-off-again = Turn the idle stop out until nothing bears on it. Then send the number.
check-knob-out-again = Roll the grip shut so that the fast idle knob springs out. Then send the number.
check-set-it = It looks only set off its mark. Go on setting it.
check-measure-supply = Let the control unit sleep. Pins on supply and ground. Wake it. Send what the meter shows.
check-measure-ground-drop = Let the control unit sleep. Red on the sensor's ground wire, black on battery minus. Wake it. Send what the meter shows.
check-measure-battery = Let the control unit sleep. Red on battery plus, black on battery minus. Send what the meter shows.
check-wiggle-plug = Wiggle the sensor's plug gently and watch the number. Does it jump?
check-watch-it-wake = Let the control unit sleep, then wake it. Does the pump hum, or a lamp or the display come on?
check-unplug-and-look = Let the control unit sleep. Pull the sensor's plug; the pins stay on the loom's side, on supply and ground. Wake it. Back near five volts? Then let it sleep and plug in again.
check-look-at-lever = Throttle shut, hands off. Does the lever rest on the small sealed stop, or does something hold it a little above?
check-measure-track = Plug off, measure the track in ohms over its whole travel: any jump?
check-trace-wires = Trace the sensor's wires with a load on them: supply, ground, signal.
check-clean-bore = Throttle body off: clean bore and plate, look at the seat.
check-read-again-name = Read again
check-wake-again-name = Wake again
check-look-at-leads-name = Pins
check-look-at-meter-name = Meter
check-look-at-cable-name = Throttle cable
check-look-at-screws-name = Sensor screws
check-back-off-again-name = Idle stop off, again
check-knob-out-again-name = Knob out, again
check-set-it-name = Go on setting
check-measure-supply-name = Supply
check-measure-ground-drop-name = Ground drop
check-measure-battery-name = Battery
check-wiggle-plug-name = Wiggle the plug
check-watch-it-wake-name = Watch it wake
check-unplug-and-look-name = Supply, unplugged
check-look-at-lever-name = Lever on its stop
check-measure-track-name = Track in ohms
check-trace-wires-name = Trace the wires
check-clean-bore-name = Clean the bore

answer-wiggle-steady = It stays still
answer-wiggle-jumps = It jumps
answer-wiggle-dont-know = Can't tell
answer-wake-signs-signs = Yes, it comes alive
answer-wake-signs-nothing = Nothing happens
answer-wake-signs-dont-know = Can't tell
answer-supply-unplugged-comes-back = Back near five
answer-supply-unplugged-still-off = Still off
answer-supply-unplugged-dont-know = Can't tell
answer-lever-rest-on-stop = It rests on the stop
answer-lever-rest-held = Something holds it
answer-lever-rest-dont-know = Can't tell

call-unknown-cause = No known cause explains the readings.
call-not-for-an-owner = The likeliest cause is not one for an owner to mend.
call-nothing-left = Every check an owner can do is done, and the readings are still odd.
call-look-alike = Several causes look alike at the meter and need a person to tell apart.

reason-fault-lamp = Volts right, fault lamp lit with the engine running: the control unit sees something else than the meter. Read its codes; signal wire and plug.
reason-fault-lamp-owner = The lamp says that the control unit sees a fault. That has to be read out first.
