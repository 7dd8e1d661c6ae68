package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.truss.Direction;
import org.junit.jupiter.api.Test;

class NetworkTest {

    /** 10 wide from -2 to 8, 30 high from 5 to 35. */
    private static Network tower() {
        return new Network(Trusses.named("Tower").joint("A", -2, 5).joint("B", 8, 5).joint("C", 3, 35)
                .members("AB BC AC").link("A", Direction.slope(1, 2)).link("A", Direction.slope(1, -1))
                .link("B", Direction.slope(0, 1)).load("C", 4, Direction.LEFT).load("C", 3, 0).build());
    }

    @Test
    void measuresTheTrussWhereverItStands() {
        assertEquals(30, tower().extent());
        assertEquals(1, tower().longestAxis());
        assertEquals(0, new Network(Trusses.canopy()).longestAxis());
        assertEquals(10, tower().length(0));
        assertEquals(Math.sqrt(25 + 900), tower().length(1));
    }

    @Test
    void findsAJointAtItsPlace() {
        Network tower = tower();

        assertEquals(2, tower.jointAt(new Vector(3, 35, 0)));
        assertEquals(2, tower.jointAt(new Vector(3 + 2e-8, 35, 0)));
        assertEquals(-1, tower.jointAt(new Vector(3 + 4e-8, 35, 0)));
        assertEquals(-1, tower.jointAt(new Vector(0, 0, 0)));
    }

    @Test
    void knowsWhatIsSupported() {
        assertTrue(tower().isSupported(0));
        assertTrue(tower().isSupported(1));
        assertFalse(tower().isSupported(2));
    }

    @Test
    void namesInclinedLinksOfAJointByNumberAndOneAloneByItsJoint() {
        assertEquals("A_1", tower().reaction(3).name());
        assertEquals("A_2", tower().reaction(4).name());
        assertEquals("B_y", tower().reaction(5).name());
        Network one = new Network(Trusses.named("Slope").joint("A", 0, 0).joint("B", 1, 0).joint("C", 0, 1)
                .members("AB BC AC").pin("A").roller("B", 120).build());
        assertEquals("R_B", one.reaction(5).name());
    }

    @Test
    void takesDirectionsForInLineUpToRounding() {
        Vector x = Vector.X;

        assertTrue(Network.inLine(x, new Vector(-1, 1e-10, 0)));
        assertFalse(Network.inLine(x, new Vector(1, 1e-8, 0)));
    }

    @Test
    void keepsLoadsOfAJointInTheOrderGivenInNewtons() {
        assertEquals(new Vector(-4000, 0, 0), tower().forcesAt(2).get(0));
        assertEquals(new Vector(3000, 0, 0), tower().forcesAt(2).get(1));
        assertEquals(1, tower().loadsAt(2).get(1).index());
    }
}
