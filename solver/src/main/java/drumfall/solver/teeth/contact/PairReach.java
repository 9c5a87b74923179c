// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.flank.Flank;
import drumfall.solver.teeth.flank.FlankPoint;
import drumfall.solver.teeth.flank.Roots;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import java.util.Optional;

/**
 * One driver tooth pushing one follower tooth: how far, and where it touches.
 *
 * <p>The follower's angle asked for by a driver point is {@code psi + h(rho)}, {@code psi} the point's polar angle about
 * the follower's centre and {@code h} the follower's half-angle at its radius {@code rho}. Its greatest value over the
 * driver's flank is where the follower stands. Along the driver's flank towards its tip the value grows with {@code -T
 * . n}, {@code T} the driver's tangent and {@code n} the follower's outward normal, which stays finite where the polar
 * form's slope does not; a change of its sign from plus to minus brackets a contact.
 */
final class PairReach {
    private static final double SHARE_TOLERANCE = 1e-13;
    private static final double JUMP = 1e-7;
    private static final double AT_JOINT = 1e-9;

    private final DriverNodes nodes;
    private final Flank follower;
    private final double followerTip;
    private final double followerRoot;
    private final double centreDistance;
    private final double driverTurn;
    private final double followerTurn;
    private final double first;
    private final double last;

    PairReach(MeshPair pair, MeshConditions conditions, int nodesPerPiece) {
        Flank driver = pair.driver().flank();
        nodes = new DriverNodes(driver, nodesPerPiece);
        follower = pair.follower().flank();
        followerTip = follower.tipRadius();
        followerRoot = follower.rootRadius();
        centreDistance = pair.centreDistance() + conditions.centreError();
        driverTurn = turn(pair.driver(), conditions.driverThinning());
        followerTurn = turn(pair.follower(), conditions.followerThinning());
        double tip = driver.tipRadius();
        double cosine =
                (centreDistance * centreDistance + tip * tip - followerTip * followerTip) / (2 * centreDistance * tip);
        double reach = cosine < 1 ? Math.acos(Math.max(-1, cosine)) : 0;
        first = driverTurn - reach - driver.rootHalfAngle();
        last = driverTurn + reach - driver.tipHalfAngle();
    }

    private static double turn(ToothForm form, double thinning) {
        return thinning / (2 * form.pitchRadius());
    }

    /** The least angle of the driver's tooth at which it can reach the follower's, rad. */
    double first() {
        return first;
    }

    /** The greatest angle of the driver's tooth at which it can reach the follower's, rad. */
    double last() {
        return last;
    }

    /** The contact with the driver's tooth at an angle from the line of centres, if there is one. */
    Optional<Contact> at(double angle) {
        return Optional.ofNullable(new Search(angle).best());
    }

    /** The search along the flank at one driver angle. */
    private final class Search {
        private final double angle;
        private final double cosine;
        private final double sine;
        private double furthest = Double.NEGATIVE_INFINITY;
        private Contact best;

        Search(double angle) {
            this.angle = angle;
            cosine = Math.cos(angle - driverTurn);
            sine = Math.sin(angle - driverTurn);
        }

        Contact best() {
            boolean inside = false;
            double before = 0;
            for (int i = 0; i < nodes.count(); i++) {
                double rho = nodeRho(i);
                if (rho > followerTip) {
                    inside = false;
                } else if (rho < followerRoot) {
                    leave(i, inside, before);
                    return best;
                } else {
                    double slope = nodeSlope(i, rho);
                    if (inside) {
                        turnOver(i, before, slope);
                    } else if (i > 0) {
                        enter(i, slope);
                    }
                    inside = true;
                    before = slope;
                }
            }
            if (inside && before > 0) {
                corner(nodes.count() - 1);
            }
            return best;
        }

        private void turnOver(int i, double before, double slope) {
            if (nodes.piece(i) != nodes.piece(i - 1)) {
                if (before > 0 && slope <= 0) {
                    corner(i - 1);
                }
            } else if (follower.pieceIndexAt(nodeRho(i)) != follower.pieceIndexAt(nodeRho(i - 1))) {
                acrossJoints(i, before, slope);
            } else if (before > 0 && slope <= 0) {
                between(nodes.piece(i), nodes.share(i - 1), nodes.share(i));
            }
        }

        /** Where the follower's flank goes from one curve to the next, each curve is looked at for itself. */
        private void acrossJoints(int i, double before, double slope) {
            int piece = nodes.piece(i);
            double from = nodes.share(i - 1);
            double here = before;
            int inner = follower.pieceIndexAt(nodeRho(i));
            for (int k = follower.pieceIndexAt(nodeRho(i - 1)); k > inner; k--) {
                double share = crossing(i, follower.pieces().get(k).startRadius());
                double outside = shareSlope(piece, share, k);
                double inside = shareSlope(piece, share, k - 1);
                if (here > 0 && outside <= 0) {
                    between(piece, from, share);
                } else if (outside > 0 && inside <= 0) {
                    touch(piece, share, Touch.FOLLOWER_CORNER);
                }
                from = share;
                here = inside;
            }
            if (here > 0 && slope <= 0) {
                between(piece, from, nodes.share(i));
            }
        }

        /** The flank comes in through the follower's tip circle just before a node. */
        private void enter(int i, double slope) {
            if (slope > 0 || nodes.piece(i) != nodes.piece(i - 1)) {
                return;
            }
            double share = crossing(i, followerTip);
            if (shareSlope(nodes.piece(i), share) > 0) {
                between(nodes.piece(i), share, nodes.share(i));
            } else {
                touch(nodes.piece(i), share, Touch.FOLLOWER_CORNER);
            }
        }

        /** The flank goes in through the circle where the follower's flank starts, just before a node. */
        private void leave(int i, boolean inside, double before) {
            if (i == 0 || nodes.piece(i) != nodes.piece(i - 1)) {
                return;
            }
            int piece = nodes.piece(i);
            double end = crossing(i, followerRoot);
            if (inside) {
                if (before > 0 && shareSlope(piece, end) <= 0) {
                    between(piece, nodes.share(i - 1), end);
                }
                return;
            }
            double start = followerTip > followerRoot ? crossing(i, followerTip) : end;
            if (start == end || shareSlope(piece, start) <= 0) {
                touch(piece, start, Touch.FOLLOWER_CORNER);
            } else if (shareSlope(piece, end) <= 0) {
                between(piece, start, end);
            }
        }

        private double crossing(int i, double radius) {
            int piece = nodes.piece(i);
            return Roots.falling(s -> shareRho(piece, s) - radius, nodes.share(i - 1), nodes.share(i), SHARE_TOLERANCE);
        }

        private void between(int piece, double from, double to) {
            double share = Roots.falling(s -> shareSlope(piece, s), from, to, SHARE_TOLERANCE);
            // A slope that jumps through zero instead of reaching it is a corner of the follower.
            boolean smooth = Math.abs(shareSlope(piece, share)) < JUMP;
            touch(piece, share, smooth ? Touch.FLANKS : Touch.FOLLOWER_CORNER);
        }

        private void corner(int node) {
            touch(nodes.piece(node), nodes.share(node), Touch.DRIVER_CORNER);
        }

        private void touch(int piece, double share, Touch touch) {
            FlankPoint point = nodes.point(piece, share);
            double polar = point.halfAngle() + angle - driverTurn;
            double x = point.radius() * Math.cos(polar);
            double y = point.radius() * Math.sin(polar);
            double rho = Math.hypot(centreDistance - x, y);
            double held = Math.max(followerRoot, Math.min(followerTip, rho));
            double asked = Math.atan2(y, centreDistance - x) + follower.halfAngle(held) - followerTurn;
            if (asked <= furthest) {
                return;
            }
            furthest = asked;
            int other = follower.pieceIndexAt(touch == Touch.FOLLOWER_CORNER ? held + AT_JOINT : held);
            best = touch == Touch.DRIVER_CORNER
                    ? onFollower(asked, x, y, rho, piece, other)
                    : onDriver(asked, x, y, point, piece, other, touch);
        }

        private Contact onDriver(
                double asked, double x, double y, FlankPoint point, int piece, int other, Touch touch) {
            double radial = point.radialNormal() / point.radius();
            double forward = point.forwardNormal() / point.radius();
            return new Contact(
                    0,
                    angle,
                    asked,
                    x,
                    y,
                    radial * x - forward * y,
                    radial * y + forward * x,
                    centreDistance,
                    touch,
                    piece,
                    other);
        }

        private Contact onFollower(double asked, double x, double y, double rho, int piece, int other) {
            double radial = follower.pieces().get(other).radialNormal(rho);
            double forward = Math.sqrt((1 - radial) * (1 + radial));
            double back = centreDistance - x;
            return new Contact(
                    0,
                    angle,
                    asked,
                    x,
                    y,
                    (radial * back + forward * y) / rho,
                    (-radial * y + forward * back) / rho,
                    centreDistance,
                    Touch.DRIVER_CORNER,
                    piece,
                    other);
        }

        private double nodeRho(int i) {
            double back = centreDistance - nodes.x(i, cosine, sine);
            double y = nodes.y(i, cosine, sine);
            return Math.sqrt(back * back + y * y);
        }

        private double nodeSlope(int i, double rho) {
            return slope(
                    nodes.x(i, cosine, sine),
                    nodes.y(i, cosine, sine),
                    nodes.normalX(i, cosine, sine),
                    nodes.normalY(i, cosine, sine),
                    rho,
                    -1);
        }

        private double shareRho(int piece, double share) {
            FlankPoint point = nodes.point(piece, share);
            double polar = point.halfAngle() + angle - driverTurn;
            double r = point.radius();
            return Math.sqrt(r * r + centreDistance * centreDistance - 2 * r * centreDistance * Math.cos(polar));
        }

        private double shareSlope(int piece, double share) {
            return shareSlope(piece, share, -1);
        }

        /** The slope against one curve of the follower, or against whichever is there if that is negative. */
        private double shareSlope(int piece, double share, int other) {
            FlankPoint point = nodes.point(piece, share);
            double polar = point.halfAngle() + angle - driverTurn;
            double c = Math.cos(polar);
            double s = Math.sin(polar);
            double x = point.radius() * c;
            double y = point.radius() * s;
            double radial = point.radialNormal();
            double forward = point.forwardNormal();
            double rho = Math.hypot(centreDistance - x, y);
            return slope(x, y, radial * c - forward * s, radial * s + forward * c, rho, other);
        }

        private double slope(double x, double y, double normalX, double normalY, double rho, int other) {
            double held = Math.max(followerRoot, Math.min(followerTip, rho));
            int curve = other < 0 ? follower.pieceIndexAt(held) : other;
            double radial = follower.pieces().get(curve).radialNormal(held);
            double forward = Math.sqrt(Math.max(0, (1 - radial) * (1 + radial)));
            double back = centreDistance - x;
            double otherX = -(radial * back + forward * y);
            double otherY = radial * y - forward * back;
            return -(normalY * otherX - normalX * otherY) / rho;
        }
    }
}
