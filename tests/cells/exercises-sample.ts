/** Exercises as an author writes them, of every kind and with every way of stating a tolerance. */
export const written = {
  radius: `
id: turn-radius
kind: number
objective: TRN-1
draw:
  tas: { from: 80, to: 160, step: 5 }
  bank: { from: 15, to: 25, step: 5 }
ask: You are established at {tas} TAS and {bank} of bank. What is the radius of the turn?
answer: turnRadius(tas, bank)
unit: NM
within: 0.03 NM
hints:
  - Speed counts twice.
why: At {tas} the radius is {answer}.
slips:
  - is: 2 * turnRadius(tas, bank)
    say: That is the diameter, the width of the whole circle.
  - is: turnRadius(tas, bank) * 1.852
    say: That is kilometres.
`,
  rateOneBank: `
id: rate-one-bank
kind: number
objective: TRN-1
draw:
  tas: { from: 80, to: 200, step: 5 }
ask: What bank gives a rate one turn at {tas}?
answer: bankForRate(tas)
unit: deg
within: 0.5 deg
slips:
  - is: tas / 10
    say: You left out the seven.
  - is: 2 * bankForRate(tas)
    say: That gives twice the rate.
`,
  stall: `
id: stall-in-turn
kind: number
objective: TRN-1
draw:
  bank: { from: 30, to: 60, step: 5 }
ask: The stalling speed is {stallSpeed} with wings level. What is it at {bank} of bank?
answer: stallSpeedInTurn(stallSpeed, bank)
unit: kt
within: 2 %
slips:
  - is: stallSpeed * loadFactor(bank)
    say: That multiplies by the load factor, not by its root.
  - is: stallSpeed
    say: That is the speed with wings level.
`,
  heading: `
id: compass-heading
kind: number
objective: TRN-1
draw:
  course: { from: 0, to: 350, step: 10 }
  drift: { list: [-12, -8, 8, 12], unit: deg }
ask: The track wanted is {course} and the drift {drift}. What is the heading?
answer: course - drift
unit: deg
within: 2 deg
slips:
  - is: course + drift
    say: That turns downwind.
  - is: course
    say: That leaves the drift out.
`,
  heightLost: `
id: height-lost
kind: number
objective: TRN-1
draw:
  verticalSpeed: { from: -400, to: -100, step: 50 }
  time: { from: 20, to: 60, step: 10 }
ask: You sink unseen at {verticalSpeed} for {time}. How much height is lost?
answer: heightError(verticalSpeed, time)
unit: ft
within: 5 ft
sign: ignored
slips:
  - is: verticalSpeed * time / 100
    say: A minute has sixty seconds.
  - is: verticalSpeed
    say: That is the loss of a whole minute.
`,
  cruise: `
id: cruise-time
kind: number
objective: TRN-1
draw:
  distance: { from: 10, to: 40, step: 1 }
ask: How long do {distance} take at {aircraft.cruise}?
answer: minutes
unit: min
within: 20 s
slips:
  - is: distance / aircraft.cruise
    say: That is hours.
  - is: 60 * distance / 66
    say: That is at 66 kt.
`,
  faster: `
id: faster-turn
kind: choice
objective: TRN-1
draw:
  tas: { from: 80, to: 120, step: 10 }
  bank: { from: 10, to: 30, step: 10 }
ask: At {tas} and {bank} of bank, how does the rate of turn compare with rate one?
options:
  higher:
    text: It is higher.
    right: turnRate(tas, bank) > 3
    say: More bank than rate one needs turns faster.
  lower:
    text: It is lower than at {tas} in a rate one turn.
    right: turnRate(tas, bank) < 3
  unknown:
    text: That depends on the weight.
    say: Weight plays no part in a level turn.
`,
  several: `
id: what-matters
kind: choice
objective: TRN-1
several: true
shuffled: false
ask: What does the radius of a level turn depend on?
options:
  speed:
    text: True airspeed
    right: true
  bank:
    text: Bank
    right: true
  weight:
    text: Weight
    say: A heavier aeroplane turns alike.
  colour: Paint
`,
  recovery: `
id: nose-low
kind: order
objective: TRN-1
ask: The nose is low and the speed rises. What comes first?
items:
  power: Close the throttle
  bank: Level the wings
  pitch: Raise the nose
answer: [power, bank, pitch]
why: A pull in a bank tightens the spiral.
slips:
  - is: [power, pitch, bank]
    say: Pulling before the wings are level tightens the spiral.
`,
} as const;
