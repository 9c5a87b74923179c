// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.SheetProblem;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The rules that hold between the fields of a brief, each one named method in a class for its part of the sheet. */
final class BriefChecks {
    private static final List<Function<Brief, Stream<SheetProblem>>> RULES = List.of(
            RangeRules::durationsInOrder,
            RangeRules::drumDiametersInOrder,
            RangeRules::drumStepFits,
            RangeRules::pendulumLengthsInOrder,
            RangeRules::beatsInOrder,
            RangeRules::qualitiesInOrder,
            RangeRules::escapeTeethInOrder,
            RangeRules::escapeTeethStepFits,
            RangeRules::wheelTeethInOrder,
            RangeRules::leavesInOrder,
            RangeRules::meshesInOrder,
            RangeRules::frictionInOrder,
            RangeRules::thinningInOrder,
            PartRules::fallsDiffer,
            PartRules::modulesAreWholeNanometres,
            PartRules::modulesDiffer,
            ToothRules::pressureAngleIsOfInvolutes,
            ToothRules::shapeIsOfItsForm,
            ToothRules::thinningLetsTeethPassAtTheClosestCentres,
            FrameRules::drumFitsBetweenThePlates,
            FrameRules::pillarsStandInTheFrame,
            FrameRules::dialCentreIsInTheFrame,
            FrameRules::leastRoomIsMeasuredAsItsFigureIs,
            FrameRules::leastRoomNeedsPlaces,
            FrameRules::pillarsSettleThePlate,
            FrameRules::bobSwingsBehindThePlate,
            PartRules::wheelHasTwoLayers,
            PartRules::layerIsWithinTheNozzle,
            PartRules::firstLayerIsWithinTheNozzle,
            PartRules::bearingsHaveARing,
            PartRules::drumTurnsWithItsRod,
            PartRules::ratchetHasRoom,
            PartRules::clickSpaceTakesARatchet,
            PartRules::clickRestsOnTheTeeth,
            PartRules::drumTakesItsRatchet,
            RangeRules::endShakeInOrder,
            BeatRules::someBeatIsAsked,
            BeatRules::lengthAndBeatsAgree,
            BeatRules::secondsArborHasItsMeshes,
            BeatRules::secondsArborGivesTheBeat,
            EscapementRules::palletsEmbraceATooth,
            EscapementRules::dropLeavesTurn,
            EscapementRules::oneWheelMeetsBoth,
            EscapementRules::arcIsWithinReach,
            ObjectiveRules::figuresDiffer,
            ObjectiveRules::measuredFiguresHaveAResolution,
            ObjectiveRules::countedFiguresHaveNone,
            ObjectiveRules::resolutionsMeasureTheirFigure,
            LockRules::eachMeshIsHeldOnce,
            LockRules::eachLockHoldsSomething,
            LockRules::heldMeshesExist,
            LockRules::heldWheelsAreAllowed,
            LockRules::heldLeavesAreAllowed,
            LockRules::heldModulesAreListed,
            LockRules::heldDistancesAgree,
            LockRules::heldMotionDirectionIsOfAMotionWork,
            LockRules::heldMotionDistanceIsOfAMotionWork,
            LockRules::heldMeshesAboveAreAllowed,
            LockRules::heldMeshesBelowAreAllowed,
            LockRules::heldDrumIsOnTheSteps,
            LockRules::heldFallsAreOffered,
            LockRules::heldEscapeTeethAreOnTheSteps);

    private BriefChecks() {}

    /** Every rule between fields that a brief breaks. */
    static List<SheetProblem> problems(Brief brief) {
        return RULES.stream().flatMap(rule -> rule.apply(brief)).toList();
    }
}
