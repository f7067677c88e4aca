package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.LimitTable.Row;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.america.Irc2024;

/**
 * Verdicts at and on either side of every limit of the International Residential Code, editions of 2018, 2021 and
 * 2024. The numbers are those of the clauses named above the rows; one line of a tape is 1/64 in.
 */
final class IrcLimitsTest {
    private static final List<Rulebook> ALL = List.of(Irc2018.rulebook(), Irc2021.rulebook(), Irc2024.rulebook());
    private static final List<Rulebook> SINCE_2021 = List.of(Irc2021.rulebook(), Irc2024.rulebook());

    private static final LimitTable TABLE = LimitTable.of("", """
            # R311.7.5.1: a riser is at most 7 3/4 in high
            rise-at-most | total rise 93 in                 | PASS
            rise-at-most | total rise 93 1/64 in            | FAIL
            rise-at-most | total rise 92 63/64 in           | PASS
            rise-at-most | total rise 90 in; rise known estimated | CANNOT_TELL
            # R311.7.5.1: the greatest riser of a flight exceeds the smallest by at most 3/8 in; by design all are alike
            rise-spread-at-most |                           | PASS
            # R311.7.3: a flight climbs at most 151 in
            flight-rise-at-most | total rise 151 in; risers 20       | PASS
            flight-rise-at-most | total rise 151 1/64 in; risers 20  | FAIL
            flight-rise-at-most | total rise 150 63/64 in; risers 20 | PASS
            flight-rise-at-most | rise known drawing                 | CANNOT_TELL
            # R311.7.5.2: a tread is at least 10 in deep, nosing to nosing; to the floor's edge too
            run-at-least | run 10 in                        | PASS
            run-at-least | run 9 63/64 in                   | FAIL
            run-at-least | run 10 1/64 in                   | PASS
            top-run-at-least | overhang 2 in                | PASS
            top-run-at-least | overhang 2 1/64 in           | FAIL
            top-run-at-least | overhang 1 63/64 in          | PASS
            top-run-at-least | overhang ?                   | CANNOT_TELL
            top-run-at-least | head flush                   | NOT_APPLICABLE
            # R311.7.5.2: the greatest tread of a flight exceeds the smallest by at most 3/8 in
            run-spread-at-most | overhang 2 3/8 in          | PASS
            run-spread-at-most | overhang 2 25/64 in        | FAIL
            run-spread-at-most | overhang 2 23/64 in        | PASS
            run-spread-at-most | overhang 1 5/8 in          | PASS
            run-spread-at-most | overhang 1 39/64 in        | FAIL
            run-spread-at-most | overhang ?                 | CANNOT_TELL
            run-spread-at-most | head flush; overhang ?     | PASS
            # R311.7.7: a tread slopes at most 1 in 48; by design it is level
            tread-slope-at-most |                           | PASS
            # R311.7.5.1: a riser leans back at most 30 degrees; by design it stands plumb
            riser-rake-at-most |                            | PASS
            riser-rake-at-most | boards open                | NOT_APPLICABLE
            # R311.7.5.1: openings more than 30 in above what is below let no 4 in sphere pass
            open-riser-gap-less-than | boards open; total rise 59 63/64 in | PASS
            open-riser-gap-less-than | boards open; total rise 60 in       | FAIL
            open-riser-gap-less-than | boards open; total rise 60 1/64 in  | FAIL
            open-riser-gap-less-than | boards 3/4 in                       | NOT_APPLICABLE
            # the same, with its 30 in: up to there it does not apply; an opening that spans 30 in is asked about
            open-riser-gap-less-than | boards open; risers 5; total rise 38 3/4 in   | NOT_APPLICABLE
            open-riser-gap-less-than | boards open; risers 5; total rise 38 53/64 in | CANNOT_TELL
            open-riser-gap-less-than | boards open; risers 6; total rise 45 in       | CANNOT_TELL
            open-riser-gap-less-than | boards open; risers 6; total rise 45 3/32 in  | FAIL
            open-riser-gap-less-than | boards open; risers 5; total rise 38 in; rise known estimated | CANNOT_TELL
            # R311.7.5.3: a nosing reaches out at least 3/4 in; from a tread depth of 11 in on none is owed
            nosing-at-least | treads 10 3/4 in              | PASS
            nosing-at-least | treads 10 47/64 in            | FAIL
            nosing-at-least | treads 10 49/64 in            | PASS
            nosing-at-least | treads 11 in; run 11 in       | NOT_APPLICABLE
            nosing-at-least | treads 11 in; run 11 1/64 in  | NOT_APPLICABLE
            nosing-at-least | treads 11 in; run 10 63/64 in | FAIL
            # R311.7.5.3: a nosing reaches out at most 1 1/4 in
            nosing-at-most | treads 11 1/4 in               | PASS
            nosing-at-most | treads 11 17/64 in             | FAIL
            nosing-at-most | treads 11 15/64 in             | PASS
            nosing-at-most | treads 12 1/2 in; run 11 in    | CANNOT_TELL
            nosing-at-most | treads 12 1/2 in; run 10 63/64 in | FAIL
            # R311.7.5.3: the floor's edge is a nosing too; 3/4 in of overhang are the riser board
            floor-nosing-at-least | overhang 1 1/2 in       | PASS
            floor-nosing-at-least | overhang 1 31/64 in     | FAIL
            floor-nosing-at-least | overhang 1 33/64 in     | PASS
            floor-nosing-at-least | overhang ?              | CANNOT_TELL
            floor-nosing-at-least | head flush              | NOT_APPLICABLE
            floor-nosing-at-least | overhang 3/4 in; run 11 in | NOT_APPLICABLE
            floor-nosing-at-most | overhang 2 in            | PASS
            floor-nosing-at-most | overhang 2 1/64 in       | FAIL
            floor-nosing-at-most | overhang 1 63/64 in      | PASS
            floor-nosing-at-most | overhang ?               | CANNOT_TELL
            floor-nosing-at-most | head flush               | NOT_APPLICABLE
            floor-nosing-at-most | overhang 3 in; run 11 in | CANNOT_TELL
            # R311.7.5.3: the greatest nosing exceeds the smallest by at most 3/8 in, the floor's edge among them
            nosing-spread-at-most | overhang 2 3/8 in       | PASS
            nosing-spread-at-most | overhang 2 25/64 in     | FAIL
            nosing-spread-at-most | overhang 2 23/64 in     | PASS
            nosing-spread-at-most | overhang 1 39/64 in     | FAIL
            nosing-spread-at-most | overhang ?              | CANNOT_TELL
            nosing-spread-at-most | head flush; overhang ?  | PASS
            # R311.7.5.3: the edge is rounded by at most 9/16 in, or bevelled by at most 1/2 in
            nosing-radius-at-most | nosing rounded 9/16 in  | PASS
            nosing-radius-at-most | nosing rounded 37/64 in | FAIL
            nosing-radius-at-most | nosing rounded 35/64 in | PASS
            nosing-radius-at-most | nosing square           | NOT_APPLICABLE
            nosing-radius-at-most | nosing bevelled 1 in    | NOT_APPLICABLE
            nosing-radius-at-most | nosing ?                | CANNOT_TELL
            nosing-bevel-at-most | nosing bevelled 1/2 in   | PASS
            nosing-bevel-at-most | nosing bevelled 33/64 in | FAIL
            nosing-bevel-at-most | nosing bevelled 31/64 in | PASS
            nosing-bevel-at-most | nosing rounded 1 in      | NOT_APPLICABLE
            nosing-bevel-at-most | nosing ?                 | CANNOT_TELL
            # R311.7.1: at least 36 in wide; beside one rail 31 1/2 in, between two rails 27 in
            clear-width-at-least | width 36 in              | PASS
            clear-width-at-least | width 35 63/64 in        | FAIL
            clear-width-at-least | width 36 1/64 in         | PASS
            clear-width-at-least | width 40 in; clear width 35 63/64 in | FAIL
            width-beside-one-rail-at-least | reach 4 1/2 in   | PASS
            width-beside-one-rail-at-least | reach 4 33/64 in | FAIL
            width-beside-one-rail-at-least | reach 4 31/64 in | PASS
            width-beside-one-rail-at-least | reach ?          | CANNOT_TELL
            width-beside-one-rail-at-least | rails none       | NOT_APPLICABLE
            width-beside-one-rail-at-least | rails both       | NOT_APPLICABLE
            width-beside-two-rails-at-least | rails both; reach 4 1/2 in   | PASS
            width-beside-two-rails-at-least | rails both; reach 4 33/64 in | FAIL
            width-beside-two-rails-at-least | rails both; reach 4 31/64 in | PASS
            width-beside-two-rails-at-least | rails both; reach ?          | CANNOT_TELL
            width-beside-two-rails-at-least | rails left                   | NOT_APPLICABLE
            # R311.7.2: 80 in of headroom above the line of the nosings, which is 76 1/2 in up at 20 in from the header
            headroom-at-least | overhead 156 1/2 in from 20 in   | PASS
            headroom-at-least | overhead 156 31/64 in from 20 in | FAIL
            headroom-at-least | overhead 156 33/64 in from 20 in | PASS
            headroom-at-least | overhead none                    | NOT_APPLICABLE
            headroom-at-least | overhead none; looked up no      | CANNOT_TELL
            headroom-at-least | overhead 160 in from 20 in; overhead known drawing | CANNOT_TELL
            headroom-at-least | overhead 160 in from 20 in; rise known estimated   | CANNOT_TELL
            # R311.7.2 Ex.1: the edge of the floor opening reaches over the sides of the treads by at most 4 3/4 in
            floor-edge-over-sides-at-most | overhead 200 in from 20 in | CANNOT_TELL
            floor-edge-over-sides-at-most | looked up no               | CANNOT_TELL
            floor-edge-over-sides-at-most | overhead none              | NOT_APPLICABLE
            # R311.7.5: measured on the hard finish, carpet left out
            hard-finish | upper finish 3/4 in               | CANNOT_TELL
            hard-finish | upper finish 0 in                 | NOT_APPLICABLE
            # R311.7.6: a landing 36 in deep and as wide as the flight at each end
            bottom-landing-depth-at-least | bottom depth 36 in       | PASS
            bottom-landing-depth-at-least | bottom depth 35 63/64 in | FAIL
            bottom-landing-depth-at-least | bottom depth 36 1/64 in  | PASS
            bottom-landing-depth-at-least | bottom depth ?           | CANNOT_TELL
            bottom-landing-width-at-least | bottom width 36 in       | PASS
            bottom-landing-width-at-least | bottom width 35 63/64 in | FAIL
            bottom-landing-width-at-least | bottom width 36 1/64 in  | PASS
            bottom-landing-width-at-least | bottom width ?           | CANNOT_TELL
            # R311.7.6 Ex.: none at the top of an interior flight, unless a door swings over it
            top-landing-depth-at-least | top door over; top depth 36 in       | PASS
            top-landing-depth-at-least | top door over; top depth 35 63/64 in | FAIL
            top-landing-depth-at-least | top door over; top depth 36 1/64 in  | PASS
            top-landing-depth-at-least | top door over; top depth ?           | CANNOT_TELL
            top-landing-depth-at-least | top door none; top depth 20 in       | NOT_APPLICABLE
            top-landing-depth-at-least | top door away; top depth ?           | NOT_APPLICABLE
            top-landing-depth-at-least | top door ?; top depth 20 in          | CANNOT_TELL
            top-landing-width-at-least | top door over; top width 36 in       | PASS
            top-landing-width-at-least | top door over; top width 35 63/64 in | FAIL
            top-landing-width-at-least | top door over; top width 36 1/64 in  | PASS
            top-landing-width-at-least | top door none; top width ?           | NOT_APPLICABLE
            # R311.3.2 Ex.: none outside a door for at most 2 risers, when it is not the required egress door
            top-landing-depth-at-least | setting outdoors; top door away; top depth 20 in; risers 2; total rise 15 in     | CANNOT_TELL
            top-landing-depth-at-least | setting outdoors; top door away; top depth 20 in; risers 3; total rise 22 1/2 in | FAIL
            top-landing-depth-at-least | setting outdoors; top door over; top depth 20 in; risers 2; total rise 15 in     | FAIL
            top-landing-depth-at-least | setting outdoors; top door none; top depth 20 in; risers 2; total rise 15 in     | FAIL
            top-landing-depth-at-least | setting outdoors; top door ?; top depth 20 in; risers 2; total rise 15 in        | CANNOT_TELL
            # R311.7.7: a landing falls at most 1 in 48
            bottom-landing-fall-at-most | bottom fall 1/48  | PASS
            bottom-landing-fall-at-most | bottom fall 1/47  | FAIL
            bottom-landing-fall-at-most | bottom fall 1/49  | PASS
            bottom-landing-fall-at-most | bottom fall ?     | CANNOT_TELL
            top-landing-fall-at-most | top door over; top fall 1/48 | PASS
            top-landing-fall-at-most | top door over; top fall 1/47 | FAIL
            top-landing-fall-at-most | top door over; top fall 1/49 | PASS
            top-landing-fall-at-most | top door none; top fall ?    | NOT_APPLICABLE
            # R311.3: the landing at an exterior door is 36 in deep and falls at most 2 percent
            door-landing-depth-at-least | setting outdoors; top door away; top depth 36 in       | PASS
            door-landing-depth-at-least | setting outdoors; top door away; top depth 35 63/64 in | FAIL
            door-landing-depth-at-least | setting outdoors; top door away; top depth 36 1/64 in  | PASS
            door-landing-depth-at-least | setting outdoors; top door away; top depth ?           | CANNOT_TELL
            door-landing-depth-at-least | setting outdoors; top door ?                           | CANNOT_TELL
            door-landing-depth-at-least | setting outdoors; top door none                        | NOT_APPLICABLE
            door-landing-depth-at-least | setting indoors; top door away                         | NOT_APPLICABLE
            door-landing-fall-at-most | setting outdoors; top door away; top fall 1/50 | PASS
            door-landing-fall-at-most | setting outdoors; top door away; top fall 1/49 | FAIL
            door-landing-fall-at-most | setting outdoors; top door away; top fall 1/51 | PASS
            door-landing-fall-at-most | setting outdoors; top door away; top fall ?    | CANNOT_TELL
            door-landing-fall-at-most | setting indoors                                | NOT_APPLICABLE
            # R311.3.1: 1 1/2 in below the sill of the required egress door; R311.3.2: 7 3/4 in at any other
            egress-door-drop-at-most | setting outdoors; top door away | CANNOT_TELL
            egress-door-drop-at-most | setting indoors                 | NOT_APPLICABLE
            other-door-drop-at-most | setting outdoors; top door over  | CANNOT_TELL
            other-door-drop-at-most | setting outdoors; top door none  | NOT_APPLICABLE
            # R311.7.8: a handrail from 4 risers on
            unrailed-risers-less-than | rails none; risers 3; total rise 22 1/2 in | PASS
            unrailed-risers-less-than | rails none; risers 4; total rise 30 in     | FAIL
            unrailed-risers-less-than | rails none; risers 5; total rise 37 1/2 in | FAIL
            unrailed-risers-less-than | rails right                                | PASS
            # R311.7.8.1: 34 in to 38 in above the line of the nosings
            handrail-height-at-least | rail height 34 in       | PASS
            handrail-height-at-least | rail height 33 63/64 in | FAIL
            handrail-height-at-least | rail height 34 1/64 in  | PASS
            handrail-height-at-least | rail height ?           | CANNOT_TELL
            handrail-height-at-least | rails none              | NOT_APPLICABLE
            handrail-height-at-most | rail height 38 in        | PASS
            handrail-height-at-most | rail height 38 1/64 in   | FAIL
            handrail-height-at-most | rail height 37 63/64 in  | PASS
            handrail-height-at-most | rail height ?            | CANNOT_TELL
            handrail-height-at-most | rails none               | NOT_APPLICABLE
            # R311.7.8.2: at most 4 1/2 in into the width
            handrail-projection-at-most | reach 4 1/2 in    | PASS
            handrail-projection-at-most | reach 4 33/64 in  | FAIL
            handrail-projection-at-most | reach 4 31/64 in  | PASS
            handrail-projection-at-most | reach ?           | CANNOT_TELL
            handrail-projection-at-most | rails none        | NOT_APPLICABLE
            # R311.7.8.3: at least 1 1/2 in off the wall
            handrail-clearance-at-least | clearance 1 1/2 in   | PASS
            handrail-clearance-at-least | clearance 1 31/64 in | FAIL
            handrail-clearance-at-least | clearance 1 33/64 in | PASS
            handrail-clearance-at-least | clearance ?          | CANNOT_TELL
            handrail-clearance-at-least | rails right          | NOT_APPLICABLE
            handrail-clearance-at-least | rails none           | NOT_APPLICABLE
            # R311.7.8.4: past every riser of the flight, ends returned
            handrail-full-length | full length yes          | PASS
            handrail-full-length | full length no           | FAIL
            handrail-full-length | full length ?            | CANNOT_TELL
            handrail-full-length | rails none               | NOT_APPLICABLE
            # R311.7.8.5 Type I: round, 1 1/4 in to 2 in thick
            round-grip-at-least | grip round 1 1/4 in       | PASS
            round-grip-at-least | grip round 1 15/64 in     | FAIL
            round-grip-at-least | grip round 1 17/64 in     | PASS
            round-grip-at-least | grip ?                    | CANNOT_TELL
            round-grip-at-least | grip 1 in x 1 in          | NOT_APPLICABLE
            round-grip-at-most | grip round 2 in            | PASS
            round-grip-at-most | grip round 2 1/64 in       | FAIL
            round-grip-at-most | grip round 1 63/64 in      | PASS
            round-grip-at-most | grip ?                     | CANNOT_TELL
            round-grip-at-most | rails none                 | NOT_APPLICABLE
            # R311.7.8.5 Type I: not round, 4 in to 6 1/4 in around, at most 2 1/4 in across (1.35, 1.8, 2.25 is 3, 4, 5)
            grip-perimeter-at-least | grip 1 in x 1 in      | PASS
            grip-perimeter-at-least | grip 63/64 in x 1 in  | FAIL
            grip-perimeter-at-least | grip 1 1/64 in x 1 in | PASS
            grip-perimeter-at-least | grip round 1 1/2 in   | NOT_APPLICABLE
            grip-perimeter-at-most | grip 1 1/2 in x 1 5/8 in   | PASS
            grip-perimeter-at-most | grip 1 1/2 in x 1 41/64 in | FAIL
            grip-perimeter-at-most | grip 1 1/2 in x 1 39/64 in | PASS
            grip-perimeter-at-most | grip ?                     | CANNOT_TELL
            grip-section-at-most | grip 1.35 in x 1.8 in    | PASS
            grip-section-at-most | grip 1.36 in x 1.8 in    | FAIL
            grip-section-at-most | grip 1.34 in x 1.8 in    | PASS
            grip-section-at-most | grip round 2 in          | NOT_APPLICABLE
            # R311.7.8.5 Type II: more than 6 1/4 in around; recesses that only the rail itself can show
            recess-start-at-most | grip 1 1/2 in x 3 1/2 in    | CANNOT_TELL
            recess-start-at-most | grip 1 1/2 in x 1 41/64 in  | CANNOT_TELL
            recess-start-at-most | grip 1 1/2 in x 1 5/8 in    | NOT_APPLICABLE
            recess-start-at-most | grip round 1 1/2 in         | NOT_APPLICABLE
            recess-depth-at-least | grip 1 1/2 in x 3 1/2 in   | CANNOT_TELL
            recess-height-at-least | grip 1 1/2 in x 3 1/2 in  | CANNOT_TELL
            recess-height-at-least | rails none                | NOT_APPLICABLE
            # R311.7.8.5 Type II: 1 1/4 in to 2 3/4 in wide above the recesses
            recess-top-width-at-least | grip 1 1/4 in x 3 1/2 in   | PASS
            recess-top-width-at-least | grip 1 15/64 in x 3 1/2 in | FAIL
            recess-top-width-at-least | grip 1 17/64 in x 3 1/2 in | PASS
            recess-top-width-at-least | grip 1 in x 1 1/2 in       | NOT_APPLICABLE
            recess-top-width-at-most | grip 2 3/4 in x 3 1/2 in    | PASS
            recess-top-width-at-most | grip 2 49/64 in x 3 1/2 in  | FAIL
            recess-top-width-at-most | grip 2 47/64 in x 3 1/2 in  | PASS
            recess-top-width-at-most | grip round 2 in             | NOT_APPLICABLE
            # R311.7.8.5: edges eased by 0.01 in at least
            rail-edge-radius-at-least | grip 1 1/2 in x 1 1/2 in | CANNOT_TELL
            rail-edge-radius-at-least | grip round 1 1/2 in      | NOT_APPLICABLE
            # R312.1.1: a guard where the drop is more than 30 in, at any point within 36 in
            unguarded-drop-at-most | guard no; risers 5; total rise 37 1/2 in   | PASS
            unguarded-drop-at-most | guard no; risers 5; total rise 37 37/64 in | FAIL
            unguarded-drop-at-most | guard no; risers 5; total rise 37 27/64 in | PASS
            unguarded-drop-at-most | guard no; risers 5; total rise 37 1/2 in; rise known estimated | CANNOT_TELL
            unguarded-drop-at-most | guard yes                                  | PASS
            unguarded-drop-at-most | guard no; right wall                       | NOT_APPLICABLE
            unguarded-drop-at-most | guard no; risers 5; total rise 37 1/2 in; setting outdoors                    | CANNOT_TELL
            unguarded-drop-at-most | guard no; risers 5; total rise 37 1/2 in; setting outdoors; fall beside 0 in  | PASS
            unguarded-drop-at-most | guard no; risers 5; total rise 37 1/2 in; setting outdoors; fall beside 1/64 in | FAIL
            unguarded-drop-at-most | guard no; setting outdoors                 | FAIL
            # R312.1.2 Ex.1: 34 in above the nosings; Ex.2: at most 38 in where its top is the handrail
            guard-height-at-least | guard height 34 in       | PASS
            guard-height-at-least | guard height 33 63/64 in | FAIL
            guard-height-at-least | guard height 34 1/64 in  | PASS
            guard-height-at-least | guard height ?           | CANNOT_TELL
            guard-height-at-least | guard no                 | NOT_APPLICABLE
            guard-as-handrail-at-most | rails right; rail height 38 in; guard height 38 in             | PASS
            guard-as-handrail-at-most | rails right; rail height 38 1/64 in; guard height 38 1/64 in   | FAIL
            guard-as-handrail-at-most | rails right; rail height 37 63/64 in; guard height 37 63/64 in | PASS
            guard-as-handrail-at-most | rails right; rail height 36 in; guard height 42 in             | NOT_APPLICABLE
            guard-as-handrail-at-most | rails right; rail height ?                                     | CANNOT_TELL
            guard-as-handrail-at-most | rails left                                                     | NOT_APPLICABLE
            guard-as-handrail-at-most | rails right; guard no                                          | NOT_APPLICABLE
            # R312.1.3 Ex.2: no 4 3/8 in sphere on the open side of a stair; Ex.1: no 6 in sphere in the triangle
            guard-opening-less-than | opening 4 3/8 in      | FAIL
            guard-opening-less-than | opening 4 23/64 in    | PASS
            guard-opening-less-than | opening 4 25/64 in    | FAIL
            guard-opening-less-than | opening ?             | CANNOT_TELL
            guard-opening-less-than | guard no              | NOT_APPLICABLE
            guard-triangle-less-than | triangle 6 in        | FAIL
            guard-triangle-less-than | triangle 5 63/64 in  | PASS
            guard-triangle-less-than | triangle 6 1/64 in   | FAIL
            guard-triangle-less-than | triangle ?           | CANNOT_TELL
            guard-triangle-less-than | guard no             | NOT_APPLICABLE
            # R312.1.1: a guard along the upper floor's edge where the drop is more than 30 in
            unguarded-edge-drop-at-most | edge left 48 in; risers 5; total rise 30 in | PASS
            unguarded-edge-drop-at-most | edge left 48 in; risers 5; total rise 29 63/64 in | PASS
            unguarded-edge-drop-at-most | edge left 48 in; risers 5; total rise 30 1/64 in | FAIL
            unguarded-edge-drop-at-most | edge left 48 in; risers 5; total rise 29 63/64 in; setting outdoors | CANNOT_TELL
            unguarded-edge-drop-at-most | edge left 48 in; edge guard 42 in | PASS
            unguarded-edge-drop-at-most | edge left ?; risers 5; total rise 29 63/64 in | PASS
            unguarded-edge-drop-at-most | edge left ? | CANNOT_TELL
            unguarded-edge-drop-at-most |  | NOT_APPLICABLE
            # R312.1.2: a guard along the upper floor's edge at least 36 in high
            edge-guard-height-at-least | edge left 48 in; guard yes; edge guard 36 in | PASS
            edge-guard-height-at-least | edge left 48 in; guard yes; edge guard 35 63/64 in | FAIL
            edge-guard-height-at-least | edge left 48 in; guard yes; edge guard 36 1/64 in | PASS
            edge-guard-height-at-least | guard yes; edge left ? | CANNOT_TELL
            edge-guard-height-at-least | edge left 48 in; guard yes | NOT_APPLICABLE
            edge-guard-height-at-least | guard yes | NOT_APPLICABLE
            edge-guard-height-at-least | edge left 48 in; guard no | NOT_APPLICABLE
            # R312.1.3: openings in the guard along the upper floor's edge less than 4 in
            edge-guard-opening-less-than | edge left 48 in; guard yes; edge guard 42 in; opening 4 in | FAIL
            edge-guard-opening-less-than | edge left 48 in; guard yes; edge guard 42 in; opening 3 63/64 in | PASS
            edge-guard-opening-less-than | edge left 48 in; guard yes; edge guard 42 in; opening 4 1/64 in | FAIL
            edge-guard-opening-less-than | edge left 48 in; guard yes; edge guard 42 in; opening ? | CANNOT_TELL
            edge-guard-opening-less-than | guard yes; edge left ? | CANNOT_TELL
            edge-guard-opening-less-than | edge left 48 in; guard yes | NOT_APPLICABLE
            # R303.7: 1 footcandle on the treads, and from 6 risers on a switch at each floor
            light-indoors | lit no                          | FAIL
            light-indoors | lit yes                         | CANNOT_TELL
            light-indoors | lit ?                           | CANNOT_TELL
            light-indoors | setting outdoors                | NOT_APPLICABLE
            unswitched-risers-less-than | lit no; risers 5; total rise 37 1/2 in | PASS
            unswitched-risers-less-than | lit no; risers 6; total rise 45 in     | FAIL
            unswitched-risers-less-than | lit no; risers 7; total rise 52 1/2 in | FAIL
            unswitched-risers-less-than | lit yes; risers 6; total rise 45 in    | CANNOT_TELL
            unswitched-risers-less-than | lit no; setting outdoors               | NOT_APPLICABLE
            # R303.8: a light at the top landing outdoors
            light-outdoors | setting outdoors; lit no       | FAIL
            light-outdoors | setting outdoors; lit yes      | CANNOT_TELL
            light-outdoors | setting outdoors; lit ?        | CANNOT_TELL
            light-outdoors | setting indoors                | NOT_APPLICABLE
            # R302.7: 1/2 in gypsum board in a closed space below
            gypsum-below-at-least |                         | CANNOT_TELL
            # R311.5.1: positive anchorage, no toenails, no nails in withdrawal
            outdoor-fixing | setting outdoors               | CANNOT_TELL
            outdoor-fixing | setting indoors                | NOT_APPLICABLE
            # R317.1: untreated wood 8 in above soil; R317.1.2: treated in the ground; R317.3: fasteners
            clearance-to-soil-at-least | setting outdoors; foot concrete | CANNOT_TELL
            clearance-to-soil-at-least | setting outdoors; foot ground   | NOT_APPLICABLE
            clearance-to-soil-at-least | setting indoors; foot concrete  | NOT_APPLICABLE
            wood-in-ground | foot ground                    | CANNOT_TELL
            wood-in-ground | foot timber                    | NOT_APPLICABLE
            fasteners-in-treated-wood |                     | CANNOT_TELL
            # R403.1.4 / R507.3: footings 12 in deep and below frost
            footing-depth-at-least | setting outdoors; foot concrete | CANNOT_TELL
            footing-depth-at-least | setting outdoors; foot timber   | NOT_APPLICABLE
            footing-depth-at-least | setting indoors; foot concrete  | NOT_APPLICABLE
            # Table R301.5: loads, which the strength checks carry
            load-on-flight |                                | CANNOT_TELL
            load-on-tread |                                 | CANNOT_TELL
            load-on-rail | guard no                         | CANNOT_TELL
            load-on-rail | rails none; guard no             | NOT_APPLICABLE
            load-on-infill | guard yes                      | CANNOT_TELL
            load-on-infill | guard no                       | NOT_APPLICABLE
            """);

    /** Table R301.5 note d speaks of guards that are no handrail only since 2021. */
    private static final LimitTable SINCE = LimitTable.of("", """
            load-along-guard | guard yes | CANNOT_TELL
            load-along-guard | guard no  | NOT_APPLICABLE
            """);

    /** Alike, level or plumb by design, or only to be looked at. */
    private static final List<String> CANNOT_BE_BROKEN = List.of(
            "rise-spread-at-most",
            "tread-slope-at-most",
            "riser-rake-at-most",
            "floor-edge-over-sides-at-most",
            "egress-door-drop-at-most",
            "other-door-drop-at-most",
            "recess-start-at-most",
            "recess-depth-at-least",
            "recess-height-at-least",
            "rail-edge-radius-at-least",
            "gypsum-below-at-least",
            "clearance-to-soil-at-least",
            "footing-depth-at-least");

    static Stream<Object[]> everyRow() {
        return Stream.concat(TABLE.with(ALL), SINCE.with(SINCE_2021));
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void every_limit_is_judged_at_it_and_on_either_side(String book, Row row) {
        Rulebook rulebook = Books.findByName(book).orElseThrow();
        assertThat(VerdictWord.of(TABLE.verdict(rulebook, row))).isEqualTo(row.expected());
    }

    @Test
    void the_table_leaves_out_no_rule_and_no_side_of_a_limit() {
        TABLE.coversEveryRuleOf(Irc2018.rulebook(), CANNOT_BE_BROKEN);
        List<Row> all =
                Stream.concat(TABLE.rows().stream(), SINCE.rows().stream()).toList();
        SINCE_2021.forEach(book -> new LimitTable("", all).coversEveryRuleOf(book, CANNOT_BE_BROKEN));
    }
}
