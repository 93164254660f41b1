namespace EpisodePlanner.Planning;

/// <summary>Kinds of work, as a bench would name them.</summary>
public enum WorkKind
{
    /// <summary>None of the others.</summary>
    Other,

    /// <summary>Drawing, modelling, calculating.</summary>
    Design,

    /// <summary>Printing parts.</summary>
    Print,

    /// <summary>Routing sheet or board.</summary>
    Route,

    /// <summary>Cutting with a laser.</summary>
    LaserCut,

    /// <summary>Sawing and cutting by hand or machine.</summary>
    Cut,

    /// <summary>Milling, turning, drilling.</summary>
    Machine,

    /// <summary>Welding and brazing.</summary>
    Weld,

    /// <summary>Grinding and sanding.</summary>
    Grind,

    /// <summary>Putting parts together.</summary>
    Assemble,

    /// <summary>Gluing and laminating.</summary>
    Glue,

    /// <summary>Painting and coating.</summary>
    Paint,

    /// <summary>Wiring at extra-low voltage.</summary>
    Wire,

    /// <summary>Work on mains wiring.</summary>
    MainsWire,

    /// <summary>Soldering.</summary>
    Solder,

    /// <summary>Building or handling a lithium battery pack.</summary>
    Battery,

    /// <summary>Springs, raised loads, flywheels: work with stored energy.</summary>
    StoredEnergy,

    /// <summary>Compressed air and pneumatics.</summary>
    CompressedAir,

    /// <summary>Writing programs.</summary>
    Code,

    /// <summary>Trying a machine, first motion included.</summary>
    Test,

    /// <summary>Riding or wearing a powered machine.</summary>
    Ride,

    /// <summary>Filming.</summary>
    Film,

    /// <summary>Editing.</summary>
    Edit,

    /// <summary>Ordering and waiting for delivery.</summary>
    Order,

    /// <summary>Waiting for somebody's approval.</summary>
    Approval,

    /// <summary>Moving the build or the workshop.</summary>
    Move,
}
