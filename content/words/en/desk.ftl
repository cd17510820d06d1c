# What passes between an owner and the workshop's desk. $name is a person's display name; $text is what somebody typed, as it is.

## To the owner

too-fast = That is faster than I can follow. Wait a minute, then send the latest again.
called-already = A person at the workshop knows. They see everything you send.
called-taken = { $name } at the workshop sees this now.
called-closed-until = The workshop is closed now. Your call is first in line: { $when }.
called-way-back = "stop" puts it back as it was.
called-put-back = Put it back as it was
held-by = { $name } at the workshop has this now. What you write goes to them.
taken-by = { $name } at the workshop is with you now. What you write goes to them.
passed-on = { $name } passes you on to a colleague, who will write here.
staff-says = { $name } (workshop): { $text }
staff-sends-picture = { $name } (workshop) sent a picture.
asked-by = { $name } (workshop) asks for a reading. { $measure }:
asked-question-by = { $name } (workshop) asks:
asked-noted = { $shown }. { $name } sees it.
asked-answered = Thank you. { $name } sees it.
given-back = { $name } gives you back to the guide. You talk to the program again.
given-back-fresh = Power and pins first, then a fresh number.
closed-by = { $name } at the workshop has closed this.
closed-not-rideable = Jumper off, pins out. Don't start or ride it as it stands.

## The card

desk-card = Case { $id }, { $state }
desk-card-flag = Red flag is up. { $flag }
desk-state-waiting = waiting since { $since }
desk-state-taken = taken by { $name }
desk-state-returned = given back { $since }
desk-state-closed = closed { $since }
desk-erased = Case { $id }: the owner had everything about them erased. It is over.
desk-rideable = Tight and set, pins out: may be started.
desk-not-rideable = NOT to be started or ridden as it stands.
desk-machine-power = { $power }; { $probes }.
desk-machine-parts = Sensor { $sensor }; { $stop }; { $knob }.
desk-machine-engine = Engine { $engine }; start list { $confirmed } of { $items } confirmed.
desk-awake = Awake and jumper on since { $since }
desk-asleep = Asleep, jumper off
desk-probes-none = no pins in
desk-probes-unsure = pins perhaps still in
desk-probes-signal = pins on signal and ground
desk-probes-supply = pins on supply and ground
desk-probes-ground = pins on ground and battery minus
desk-probes-battery = leads on the battery
desk-sensor-tight = tight
desk-sensor-loose = LOOSE
desk-stop-set = idle stop in place
desk-stop-off = idle stop OFF
desk-stop-off-by = idle stop OFF, { $turns } { $turns ->
    [1] turn
   *[other] turns
 } counted
desk-knob-set = fast idle in place
desk-knob-off = fast idle OFF
desk-knob-off-by = fast idle OFF, { $clicks } { $clicks ->
    [1] click
   *[other] clicks
 } counted
desk-engine-running = RUNNING
desk-engine-hot = off, has run
desk-engine-cold = off, not run yet
desk-no-set-up-open = No set-up is open.
desk-who = Owner: { $name } on { $platform }
desk-where = { $machine }, { $at }, since { $since }. Code { $code }.
desk-at = at "{ $stage }"
desk-at-part = at "{ $stage }", part { $part } of { $parts }
desk-about = { $machine }, code { $code }
desk-answer = { $question }: { $answer }
desk-own-words = Wrote: { $text }
desk-head-readings = Readings:
desk-head-tried = Tried:
desk-head-causes = Likely:
desk-reading = { $measure }: { $shown }, { $result } ({ $limits })
desk-reading-from = { $measure }: { $shown }, { $result } ({ $limits }; { $source })
desk-reading-plain = { $measure }: { $shown }
desk-first = { $measure }, first
desk-as-found = { $measure }, as found
desk-asked-for = { $measure }, asked for
desk-struck = { $measure }: "{ $typed }", struck: { $why }
desk-why-asleep = asleep
desk-why-implausible = makes no sense
desk-why-unclear = too coarse to tell
desk-why-asked = wandering
desk-why-doubted = asked for again
desk-figure = { $value } { $unit }
desk-figures = { $low } to { $high } { $unit }
desk-overload = over its range
desk-nothing = nothing shown
desk-limits = { $low } to { $high }
desk-limits-high = { $high } or less
desk-limits-low = { $low } or more
desk-result-pass = right
desk-result-low = too low
desk-result-high = too high
desk-result-unclear = too coarse to tell
desk-result-implausible = makes no sense
desk-result-accepted = accepted by { $name }
desk-source-manual = manual
desk-source-workshop = workshop
desk-source-common-practice = common practice
desk-source-owner = owner's own figure
desk-source-page = { $source }, { $page }
desk-trial = { $part } { $direction } { $amount } { $unit }: { $before } to { $after }
desk-unit-turn = { $amount ->
    [1] turn
   *[other] turns
 }
desk-unit-click = { $amount ->
    [1] click
   *[other] clicks
 }
desk-unit-nudge = { $amount ->
    [1] hair
   *[other] hairs
 }
desk-unit-mm = mm
desk-direction-in = in
desk-direction-out = out
desk-direction-clockwise = clockwise
desk-direction-counter-clockwise = counter-clockwise
desk-direction-more = more play
desk-direction-less = less play
desk-checked = { $check }
desk-cause = { $cause }: { $share } %
desk-cautions = Cautions acknowledged: { $cautions }
desk-reason = Called because: { $reason }
desk-job = Job { $job }
desk-history-remark = { $name } noted: { $note }
desk-history-accepted = { $name } accepted: { $note }
desk-history-cleared = { $name } declared over: { $note }
desk-note-cleared = { $flag } { $how }
desk-note-accepted = { $measure }: { $value }. { $why }

desk-take = Take it
desk-take-over = Take over from { $name }
desk-give-back = Give back
desk-ask = Ask for a reading
desk-check = Send a check
desk-close = Close it
desk-help = Help

## In a case

desk-owner-said = Owner { $name }: { $text }
desk-owner-changed = Owner { $name } changed a message to: { $text }
desk-owner-picture = Owner { $name } sent a picture.
desk-owner-picture-with = Owner { $name } sent a picture: { $text }
desk-owner-pressed = Owner { $name } pressed: { $choice }
desk-read-along = { $measure }: { $shown } would be { $result } ({ $limits }).
desk-taken = { $name } has it. What you type here goes to the owner. "/help" lists the rest.
desk-taken-from = { $name } has taken over from { $from }. What you type here goes to the owner.
desk-yours = It is yours already.
desk-held-by = { $name } has it.
desk-take-first = Nobody has it. Take it first.
desk-not-sent = Nobody has it yet: nothing went to the owner. Take it first.
desk-too-old = That is too long ago. The owner can call again.
desk-passed = { $name } passes case { $id } on. Who takes it?
desk-passed-to = { $name } passes case { $id } on to { $to }.
desk-returned = { $name } has given it back. The program goes on.
desk-closed = { $name } has closed it.
desk-closed-cause = { $name } has closed it. Cause: { $cause }
desk-closed-already = It is closed already.
desk-which-cause = Which cause was it?
desk-asked = Asked for: { $measure }
desk-ask-which = Which reading? Press one, or write "/ask closed stop".
desk-ask-unknown = I don't know that reading. These I can ask for:
desk-ask-running = That one is read by its own step: "/jump" to it, then give back.
desk-asked-answer = { $check } Answer: { $answer }
desk-check-which = Which check? Press one.
desk-check-unknown = I don't know that check. These I can send:
desk-check-sent = Sent: { $check }
desk-accept-reason = Give a reason: "/accept as the manual allows".
desk-accept-loose = The sensor is loose and will move. Have it tightened and read again first.
desk-accept-none = There is no figure to accept.
desk-accepted = { $measure }: { $shown } accepted by { $name }. The record will say so.
desk-stages = Jump where? "/jump" and one of: { $stages }.
desk-goes-on-at = Given back, it goes on at "{ $stage }".
desk-goes-on-at-after = Given back, it goes on at "{ $stage }"; the start list comes before, from "{ $first }".
desk-no-set-up = No set-up is open.
desk-flag-up = A red flag is up. { $flag } Make sure that it is over, then write "/clear" and how you know.
desk-no-flag = No red flag is up.
desk-withdrawn = This procedure is withdrawn, and no other has this step: the program can't go on with it. Close the case.
desk-clear-reason = Write how you made sure: "/clear leak mended, dry".
desk-cleared = { $name } has declared it over.
desk-noted = Noted. It stays at the desk.
desk-note-empty = Write it behind: "/note looks like a bent plate".
desk-job-noted = Job { $job }.
desk-job-none = No job number now.
desk-edited = An edited message is not sent again. Write a new one.
desk-start = Start links are for owners.
desk-choice-unknown = That button does nothing here.
desk-command-unknown = I don't know that one. Nothing went to the owner. "/help" lists what there is.
desk-case-past = This case is over. The owner's present one is { $id }.
desk-case-unknown = I know no such case.
desk-case-unknown-id = I know no case { $id }.
desk-unreachable = That did not reach the owner: { $why }
desk-unanswered = The owner has waited { $minutes } minutes for { $name }.

desk-help-talk = Plain words and pictures go to the owner, under your name. What begins with "/" or "." never does.
desk-help-take = /take: it is yours. /pass NAME: to a colleague.
desk-help-measure = /ask READING: the program asks and judges. /check NAME: it sends a check.
desk-help-decide = /accept REASON: the last figure counts. /jump STEP: where it goes on. /clear HOW: a red flag is over.
desk-help-end = /give-back: the program goes on. /close CAUSE: it ends, with a record.
desk-help-note = /note TEXT stays here. /job NUMBER. /card, /record, /record json.
desk-help-desk = At the desk as a whole: cases, find WORDS, record CODE, closed today, open again, tips.
desk-help-case = In a case's thread: take it, then "/help".

## The desk as a whole

desk-reminder = Case { $id } has been waiting for { $minutes } minutes. { $reason }
desk-hint = Cases come here. "help" lists what I can do.
desk-in-thread = Do that in the case's own thread. "cases" lists them.
desk-list-none = No case waits, and none is in hand.
desk-list-waiting = Waiting: { $count }
desk-list-taken = In hand: { $count }
desk-list-case = { $id }: { $name }, { $machine }, code { $code }, since { $since }, { $state }. { $reason }
desk-list-state-waiting = waiting
desk-list-state-taken = in hand
desk-list-state-returned = given back
desk-list-state-closed = closed
desk-found-none = I found nothing for { $text }.
desk-found-record = Record { $code }: { $machine }, { $result }, { $when }
desk-result-record-set = set
desk-result-record-right-as-found = right as found
desk-result-record-accepted = accepted
desk-result-record-not-set = not set
desk-closed-today = Closed for today.
desk-closed-today-until = Closed for today. Owners are told: { $when }. "open again" takes it back.
desk-open-again = By the opening hours again.
desk-summary = The day ends. Waiting: { $waiting }, in hand: { $taken }, ended today: { $ended }, records: { $done }.
desk-record-head = Case { $id }: { $name }, opened { $opened }
desk-record-reading = { $reading }: { $value } ({ $result })
desk-record-asked = { $measure }: "{ $typed }", asked for
desk-record-entry = { $when } { $what }{ $note }
desk-record-note = : { $note }
desk-record-cause = Cause: { $cause }
desk-did-opened = opened
desk-did-flagged = red flag
desk-did-cleared = { $name } declared a flag over
desk-did-taken = { $name } took it
desk-did-passed = { $name } passed it on
desk-did-returned = { $name } gave it back
desk-did-closed = { $name } closed it
desk-did-reopened = { $name } called again
desk-did-accepted = { $name } accepted
desk-did-asked = { $name } asked for
desk-did-checked = { $name } sent a check
desk-did-jumped = { $name } chose the step
desk-did-remark = { $name } noted
desk-json = { $json }

## Why a person is called

reason-asked = The owner asked for a person.
reason-procedure-withdrawn = The procedure was withdrawn, and no other has this step.
reason-meter-too-coarse = The owner's meter can't show enough digits to decide.
reason-factory-stop-turned = The plate's factory stop has been turned: the closed position can't be trusted.
reason-factory-stop-turned-owner = Then the closed position can't be trusted. That is one for a person.
reason-factory-stop-unsure = The owner can't tell whether the factory stop was turned.
reason-factory-stop-unsure-owner = A person will help you tell.
reason-cable-tight-at-lock = Idle speed changes as the bars turn: a cable or loom is too tight.
reason-cable-tight-at-lock-owner = Something pulls the throttle. It must not be ridden like this.
reason-not-the-sensor = Idle speed is only reached with the signal out of its warm band: not the sensor. Dirty bore, valves, plug, fuel or an air leak.
reason-not-the-sensor-owner = That is not the sensor's doing. We leave it alone and look for the cause.
reason-flag-throttle-sticks = RED FLAG: the throttle sticks.
reason-flag-revs-hang = RED FLAG: revs hang or climb.
reason-flag-engine-wont-stop = RED FLAG: the engine won't stop.
reason-flag-fuel-leak = RED FLAG: fuel smell or leak.
reason-flag-smoke = RED FLAG: smoke, burning or steam.
reason-flag-hot-leads = RED FLAG: leads, jumper or battery hot or sparking.
reason-flag-pump-runs-on = RED FLAG: the pump does not stop.
reason-flag-unwell = RED FLAG: somebody feels unwell, perhaps from exhaust gas.
reason-flag-injured = RED FLAG: somebody is hurt.
reason-call-unknown-cause = No known cause explains the readings.
reason-call-not-for-an-owner = The likeliest cause is not one for an owner to mend.
reason-call-nothing-left = Every check an owner can do is done, and the readings are still odd.
reason-call-look-alike = Several causes look alike at the meter. A person has to tell them apart.
reason-stuck-slots-at-end = The sensor is at the end of its slots and the reading is not right yet.
reason-stuck-moves-stop-helping = Turning no longer brings the reading nearer.
reason-stuck-too-coarse = The steps of this part are too coarse for its band.
desk-picture-readings = All readings against their bands.
desk-picture-approach = The moves of this stage, and what each did.
desk-picture-causes = The likely causes.

## The report

report-counts = Set-ups ended: { $ended }. Cases closed: { $closed }.
report-stops = { $procedure }: where owners stop
report-times = { $procedure }: time by stage
report-causes = Causes found, by month
report-head-stage = stage
report-head-reached = came to it
report-head-stopped = stopped there
report-head-quarter = a quarter took at most
report-head-half = half
report-head-three-quarters = three quarters (min)
report-head-cause = cause
report-picture = Picture: { $file }
report-nothing = nothing yet
